// SPDX-License-Identifier: EPL-2.0
package punchwright.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.Samples;
import punchwright.model.Texts;
import punchwright.model.files.Workspace;
import punchwright.model.shop.Library;
import punchwright.model.shop.ShopPackage.Literals;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;

/** Every command: execute, undo, redo, and the state after each. */
class EditsTest {

    @TempDir
    Path folder;

    private Workspace workspace;
    private ModelEditing domain;
    private Library library;

    @BeforeEach
    void open() throws Exception {
        workspace = Workspace.create(folder, "Test shop", "EUR");
        library = workspace.library();
        Library sample = Samples.library();
        library.getTools().addAll(List.copyOf(sample.getTools()));
        library.getMachines().addAll(List.copyOf(sample.getMachines()));
        library.getMaterials().addAll(List.copyOf(sample.getMaterials()));
        library.getStock().addAll(List.copyOf(sample.getStock()));
        workspace.put(Samples.part(library));
        workspace.saveAll();
        domain = new ModelEditing(workspace);
    }

    @AfterEach
    void close() {
        domain.dispose();
        workspace.close();
    }

    /** Executes, undoes and redoes; the library must be as before, and as after, again. */
    private void thereAndBack(Command command, String label) throws Exception {
        assertTrue(command.canExecute(), label);
        assertEquals(label, command.getLabel());
        Library before = EcoreUtil.copy(library);
        domain.getCommandStack().execute(command);
        Library after = EcoreUtil.copy(library);
        assertFalse(EcoreUtil.equals(before, after), "the command changed nothing");
        assertTrue(domain.getCommandStack().canUndo());
        domain.getCommandStack().undo();
        assertTrue(EcoreUtil.equals(before, library), "undo");
        assertEquals(0, workspace.saveAll(), "after undo the file on disk is the present state");
        domain.getCommandStack().redo();
        assertTrue(EcoreUtil.equals(after, library), "redo");
    }

    @Test
    void setAllChangesOnlyWhatDiffers() throws Exception {
        List<Tool> tools = List.copyOf(library.getTools());
        tools.get(1).setPrice(99);
        workspace.saveAll();
        thereAndBack(Edits.setAll(domain, tools, Literals.TOOL__PRICE, 99.0), "Set Price of 2 objects");
        assertEquals(99, tools.get(0).getPrice());
        assertFalse(Edits.setAll(domain, tools, Literals.TOOL__PRICE, 99.0).canExecute(), "nothing left to change");
        assertFalse(Edits.setAll(domain, tools, Literals.MACHINE__PRESS_FORCE_KN, 5.0).canExecute(), "no such feature");
    }

    @Test
    void moveChangesTheOrderAndStopsAtTheEnds() throws Exception {
        Tool first = library.getTools().get(0);
        thereAndBack(Edits.move(domain, first, 1), "Move Tool 'Tool r10' (r10)");
        assertEquals(1, library.getTools().indexOf(first));
        assertFalse(Edits.move(domain, first, 1).canExecute(), "beyond the end");
        assertFalse(Edits.move(domain, first, 0).canExecute(), "nowhere");
        assertFalse(Edits.move(domain, library, 1).canExecute(), "in no list");
    }

    @Test
    void addGivesAFreeIdentifier() throws Exception {
        Tool tool = Samples.tool("r10", ToolShape.ROUND, 10, 0);
        thereAndBack(Edits.add(domain, library, Literals.LIBRARY__TOOLS, tool), "Add Tool 'Tool r10' (r10-2)");
        assertEquals("r10-2", library.getTools().get(2).getId());
    }

    @Test
    void duplicateCopiesWithNewIdentifiersBehindTheOriginals() throws Exception {
        thereAndBack(Edits.duplicate(domain, List.copyOf(library.getTools())), "Duplicate 2 objects");
        assertEquals(List.of("r10", "r10-2", "s50", "s50-2"), library.getTools().stream().map(Tool::getId).toList());
        thereAndBackMachine();
    }

    private void thereAndBackMachine() throws Exception {
        workspace.saveAll();
        thereAndBack(Edits.duplicate(domain, List.of(library.getMachines().get(0))), "Duplicate one object");
        Set<String> ids = new TreeSet<>();
        library.getMachines().forEach(m -> m.getPlaces().forEach(p -> ids.add(p.getId())));
        assertEquals(Set.of("p1", "p2", "p1-2", "p2-2").size(), ids.size());
        assertEquals(library.getMachines().get(1).getPlaces().get(0), library.getMachines().get(1).getStanding().get(0)
                .getPlace());
    }

    @Test
    void whatIsUsedIsNotRemoved() throws Exception {
        Tool used = library.getTools().get(0);
        Tool free = library.getTools().get(1);
        assertEquals(List.of(library.getMachines().get(0).getStanding().get(0)), Edits.whereUsed(used));
        assertFalse(Edits.remove(domain, List.of(used)).canExecute());
        assertFalse(Edits.remove(domain, List.of(library.getMaterials().get(0))).canExecute(), "used by stock and part");
        assertTrue(Edits.remove(domain, List.of(used, library.getMachines().get(0))).canExecute(), "its user goes with it");
        thereAndBack(Edits.remove(domain, List.of(free)), "Remove one object");
        assertEquals(1, library.getTools().size());
    }

    @Test
    void revisionsAreNumbered() throws Exception {
        thereAndBack(Edits.revise(domain, library, "2026-02-01", "A. Probe", "Prices of February"), "Revision 1");
        thereAndBackSecond();
    }

    private void thereAndBackSecond() throws Exception {
        workspace.saveAll();
        thereAndBack(Edits.revise(domain, library, "2026-03-01", "A. Probe", "Prices of March"), "Revision 2");
    }

    @Test
    void nothingCanBeChangedInAWorkspaceOpenForReading() throws Exception {
        workspace.saveAll();
        try (Workspace reader = Workspace.open(folder, Workspace.Access.READ)) {
            ModelEditing reading = new ModelEditing(reader);
            assertTrue(reading.isReadOnly(reader.library().eResource()));
            assertFalse(Edits.setAll(reading, reader.library().getTools(), Literals.TOOL__PRICE, 1.0).canExecute());
            reading.dispose();
        }
    }

    @Test
    void itemProvidersSpeakTheModelsNames() {
        Tool tool = library.getTools().get(0);
        var labels = (IItemLabelProvider) domain.getAdapterFactory().adapt(tool, IItemLabelProvider.class);
        assertEquals("Tool Tool r10", labels.getText(tool));
        var source = (IItemPropertySource) domain.getAdapterFactory().adapt(tool, IItemPropertySource.class);
        assertEquals("Length or diameter [mm]", source.getPropertyDescriptor(tool, Literals.TOOL__LENGTH_MM)
                .getDisplayName(tool));
        assertEquals("Tool r10", Edits.label(tool));
    }

    @Test
    void textsAreAlikeInBothLanguages() {
        Texts.assertAlike("/punchwright/model/edit/edits.properties", "/punchwright/model/edit/edits_de.properties");
        Texts.assertAlike("/plugin.properties", "/plugin_de.properties");
    }
}
