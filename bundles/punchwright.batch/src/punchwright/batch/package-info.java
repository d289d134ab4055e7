// SPDX-License-Identifier: EPL-2.0
/** The headless application: the same operations as the workbench, with exit codes and without a display. */
package punchwright.batch;
