// SPDX-License-Identifier: EPL-2.0
/**
 * Commands on the model that a window and a command line share.
 *
 * <p>Purpose: change model objects so that every change can be undone. Input: model objects and an editing domain. Result: EMF
 * commands on the domain's command stack. No user interface. The item providers beside it are generated; labels come from
 * plugin.properties and its translations.</p>
 */
package punchwright.model.edit;
