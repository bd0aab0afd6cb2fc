// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.welcome;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.commands.LibraryDialogs;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** What is on the welcome page: all of it can be reached with Tab and used with Enter or Space. */
final class WelcomePage {

    private static final int TEXT_WIDTH = 560;
    private static final int BUTTON_WIDTH = 260;
    private static final float TITLE_FACTOR = 1.9f;
    private static final float HEADING_FACTOR = 1.25f;

    private final Composite body;
    private final LocalResourceManager resources;
    private final Icons icons;
    private final LibrarySession session;
    private Button first;

    WelcomePage(Composite parent, LibrarySession session, LibraryDialogs dialogs) {
        this.session = session;
        body = new Composite(parent, SWT.NONE);
        body.setData("org.eclipse.e4.ui.css.id", "benchlore-welcome");
        resources = new LocalResourceManager(JFaceResources.getResources(), body);
        icons = new Icons(body);
        GridLayoutFactory.fillDefaults().margins(32, 24).spacing(0, 6).applyTo(body);
        heading(Messages.title, TITLE_FACTOR, 0);
        words(Messages.purpose);
        heading(Messages.start, HEADING_FACTOR, 14);
        first = button(Messages.openDemonstration, "demonstration", "welcome.demonstration", session::openDemonstration);
        words(Messages.demonstrationNote);
        button(Messages.openFolder, "open", "welcome.open", dialogs::open);
        button(Messages.newLibrary, "new", "welcome.new", dialogs::create);
        recent(session.workshop().recent());
        heading(Messages.keysTitle, HEADING_FACTOR, 14);
        words(Messages.keys);
    }

    Composite control() {
        return body;
    }

    void setFocus() {
        first.setFocus();
    }

    private void heading(String text, float factor, int above) {
        var label = new Label(body, SWT.NONE);
        label.setText(text);
        label.setData("org.eclipse.e4.ui.css.id", "benchlore-heading");
        var data = JFaceResources.getDialogFont().getFontData()[0];
        label.setFont(resources.create(FontDescriptor.createFrom(data)
                .setHeight(Math.round(data.height * factor)).setStyle(SWT.BOLD)));
        GridDataFactory.fillDefaults().indent(0, above).applyTo(label);
    }

    private void words(String text) {
        var label = new Label(body, SWT.WRAP);
        label.setText(text);
        GridDataFactory.fillDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
    }

    private Button button(String text, String icon, String id, Runnable action) {
        var button = new Button(body, SWT.PUSH | SWT.LEFT);
        button.setText(text);
        button.setImage(icons.named(icon));
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        Keys.on(button, SWT.CR, action);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).hint(BUTTON_WIDTH, SWT.DEFAULT).applyTo(button);
        return button;
    }

    private void recent(List<Path> folders) {
        if (folders.isEmpty()) {
            return;
        }
        heading(Messages.recent, HEADING_FACTOR, 14);
        for (int i = 0; i < folders.size(); i++) {
            recent(folders.get(i), i);
        }
    }

    private void recent(Path folder, int index) {
        var link = new Link(body, SWT.NONE);
        link.setText("<a>" + folder.getFileName() + "</a>   " + folder.getParent());
        link.setData(Ids.WIDGET_ID, "welcome.recent." + index);
        link.addListener(SWT.Selection, event -> session.open(folder));
        GridDataFactory.fillDefaults().applyTo(link);
    }
}
