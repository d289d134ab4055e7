// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

import punchwright.model.Samples;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.Place;
import punchwright.model.shop.Standing;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.Tool;
import punchwright.model.work.Assembly;
import punchwright.model.work.HolePattern;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.PlateShape;

/** The sample objects together, each root in a resource of its own. */
final class World {

    final Library library = Samples.library();
    final Part part = Samples.part(library);
    final Assembly assembly = Samples.assembly(part);
    final Order order = Samples.order(part);
    final Plan plan = Samples.plan(library, part, order);
    private final List<Resource> resources = new ArrayList<>();

    World() {
        ResourceSet set = new ResourceSetImpl();
        for (var root : List.of(library, part, assembly, order, plan)) {
            Resource resource = new XMIResourceImpl(URI.createURI("memory:/" + root.eClass().getName()));
            resource.getContents().add(root);
            set.getResources().add(resource);
            resources.add(resource);
        }
    }

    List<Violation> check() {
        List<Violation> all = new ArrayList<>();
        resources.forEach(r -> all.addAll(Checks.of(r.getContents().get(0))));
        return all;
    }

    Machine machine() {
        return library.getMachines().get(0);
    }

    Place place() {
        return machine().getPlaces().get(0);
    }

    Standing standing() {
        return machine().getStanding().get(0);
    }

    Tool tool() {
        return library.getTools().get(0);
    }

    Material material() {
        return library.getMaterials().get(0);
    }

    StockSheet stock() {
        return library.getStock().get(0);
    }

    PlateShape plate() {
        return (PlateShape) part.getShape();
    }

    HolePattern holes() {
        return plate().getHoles().get(0);
    }

    Layout layout() {
        return plan.getJobs().get(0).getLayouts().get(0);
    }

    ToolUse use() {
        return plan.getJobs().get(0).getToolUses().get(0);
    }
}
