// SPDX-License-Identifier: EPL-2.0
/** Tests that run inside a real workbench window, under an X server. */
package punchwright.ui.tests;
