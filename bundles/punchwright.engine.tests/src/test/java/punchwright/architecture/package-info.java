// SPDX-License-Identifier: EPL-2.0
/** Holds the directions between packages and bundles: who may know whom. */
package punchwright.architecture;
