// SPDX-License-Identifier: EPL-2.0
/** Tests of the finished product: what it carries for each system, and whether it starts headless on this one. */
package punchwright.product;
