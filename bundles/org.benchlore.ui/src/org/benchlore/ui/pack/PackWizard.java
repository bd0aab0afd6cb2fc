// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.lang.reflect.InvocationTargetException;
import java.util.function.Consumer;

import org.benchlore.pack.Packing.Made;
import org.benchlore.ui.Failures;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.wizard.Wizard;

/** Two pages: what goes in, and what becomes of it where. The work shows its progress and can be stopped. */
final class PackWizard extends Wizard {

    private final OpenLibrary library;
    private final Consumer<Made> done;
    private final ChoicePage choice;
    private final PlacePage place;

    PackWizard(OpenLibrary library, Consumer<Made> done) {
        this.library = library;
        this.done = done;
        this.choice = new ChoicePage(library);
        this.place = new PlacePage(library, choice::request);
        setWindowTitle(Messages.packTitle);
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        addPage(choice);
        addPage(place);
    }

    @Override
    public boolean canFinish() {
        return getContainer().getCurrentPage() == place && place.isPageComplete();
    }

    @Override
    public boolean performFinish() {
        var request = choice.request();
        var forms = place.forms();
        var learner = place.withLearner();
        var out = place.place();
        var made = new Made[1];
        try {
            getContainer().run(true, true, monitor -> {
                try {
                    made[0] = library.packing().make(request, forms, learner, out, monitor);
                } catch (Exception e) {
                    throw new InvocationTargetException(e);
                }
            });
        } catch (InvocationTargetException e) {
            return failed(e.getCause());
        } catch (InterruptedException e) {
            return failed(new OperationCanceledException());
        }
        getShell().getDisplay().asyncExec(() -> done.accept(made[0]));
        return true;
    }

    private boolean failed(Throwable cause) {
        boolean wasStopped = cause instanceof OperationCanceledException;
        if (!wasStopped) {
            Failures.log(String.valueOf(cause.getMessage()), cause);
        }
        place.setErrorMessage(wasStopped ? Messages.stopped : cause.getMessage());
        return false;
    }
}
