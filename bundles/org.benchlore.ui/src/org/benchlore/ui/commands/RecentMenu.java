// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import java.nio.file.Path;
import java.util.Map;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/** The libraries that were worked in, latest first. */
public final class RecentMenu extends CompoundContributionItem {

    @Override
    protected IContributionItem[] getContributionItems() {
        var workbench = PlatformUI.getWorkbench();
        return workbench.getService(LibrarySession.class).workshop().recent().stream().map(RecentMenu::item)
                .toArray(IContributionItem[]::new);
    }

    private static IContributionItem item(Path folder) {
        var parameter = new CommandContributionItemParameter(PlatformUI.getWorkbench(), null, OpenRecentHandler.COMMAND,
                CommandContributionItem.STYLE_PUSH);
        parameter.parameters = Map.of(OpenRecentHandler.FOLDER, folder.toString());
        parameter.label = folder.toString().replace("&", "&&");
        return new CommandContributionItem(parameter);
    }
}
