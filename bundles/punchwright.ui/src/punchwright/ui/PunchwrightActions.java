// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

import punchwright.ui.text.Texts;

/** The menus of the window. Our own commands come in through plugin.xml at the groups named here. */
final class PunchwrightActions extends ActionBarAdvisor {

    private IWorkbenchWindow window;

    PunchwrightActions(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow newWindow) {
        window = newWindow;
        for (ActionFactory factory : new ActionFactory[] { ActionFactory.SAVE, ActionFactory.SAVE_ALL, ActionFactory.CLOSE,
            ActionFactory.CLOSE_ALL, ActionFactory.REVERT, ActionFactory.QUIT, ActionFactory.UNDO, ActionFactory.REDO,
            ActionFactory.COPY, ActionFactory.ABOUT, ActionFactory.RESET_PERSPECTIVE }) {
            register(factory.create(window));
        }
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        bar.add(file());
        bar.add(menu("menu.edit", IWorkbenchActionConstants.M_EDIT, ActionFactory.UNDO, ActionFactory.REDO, null,
                ActionFactory.COPY));
        MenuManager plan = new MenuManager(Texts.of("menu.plan"), "plan");
        plan.add(new GroupMarker("work"));
        bar.add(plan);
        MenuManager view = new MenuManager(Texts.of("menu.window"), IWorkbenchActionConstants.M_WINDOW);
        IContributionItem views = ContributionItemFactory.VIEWS_SHORTLIST.create(window);
        view.add(views);
        view.add(new Separator());
        view.add(getAction(ActionFactory.RESET_PERSPECTIVE.getId()));
        bar.add(view);
        MenuManager help = menu("menu.help", IWorkbenchActionConstants.M_HELP, ActionFactory.ABOUT);
        help.insertBefore(ActionFactory.ABOUT.getId(), new GroupMarker("start"));
        bar.add(help);
    }

    private MenuManager file() {
        MenuManager file = new MenuManager(Texts.of("menu.file"), IWorkbenchActionConstants.M_FILE);
        file.add(new GroupMarker("open"));
        file.add(new Separator());
        for (ActionFactory factory : new ActionFactory[] { ActionFactory.SAVE, ActionFactory.SAVE_ALL, ActionFactory.REVERT }) {
            file.add(getAction(factory.getId()));
        }
        file.add(new Separator());
        file.add(getAction(ActionFactory.CLOSE.getId()));
        file.add(getAction(ActionFactory.CLOSE_ALL.getId()));
        file.add(new Separator());
        file.add(getAction(ActionFactory.QUIT.getId()));
        return file;
    }

    private MenuManager menu(String key, String id, ActionFactory... factories) {
        MenuManager menu = new MenuManager(Texts.of(key), id);
        for (ActionFactory factory : factories) {
            menu.add(factory == null ? new Separator()
                    : new org.eclipse.jface.action.ActionContributionItem(getAction(factory.getId())));
        }
        return menu;
    }
}
