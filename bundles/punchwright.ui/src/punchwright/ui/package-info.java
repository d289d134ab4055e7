// SPDX-License-Identifier: EPL-2.0
/** The workbench: application, window and first arrangement of views. */
package punchwright.ui;
