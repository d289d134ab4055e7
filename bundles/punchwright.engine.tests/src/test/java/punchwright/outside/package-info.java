// SPDX-License-Identifier: EPL-2.0
/** Where tests find what is not part of the repository; without it they are skipped with "skipped, no data". */
package punchwright.outside;
