// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.job.JobEdits;
import org.benchlore.edit.job.LineEdits;
import org.benchlore.edit.job.Recorded;
import org.benchlore.model.Address;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Person;
import org.benchlore.model.Shop;
import org.benchlore.store.Library;
import org.benchlore.ui.edit.form.FormScope;
import org.benchlore.ui.edit.form.Unread;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.workshop.HeldWrench;
import org.benchlore.workshop.OpenLibrary;
import org.benchlore.workshop.ShopWrenches;
import org.eclipse.ui.IWorkbenchPartSite;

/**
 * What the parts of a job's editor share.
 *
 * @param site the editor's site
 * @param opened the library
 * @param session the session of the record
 * @param scope what the fields of the forms share
 * @param unread keeps what cannot be understood
 * @param said tells a sentence
 */
public record Tools(IWorkbenchPartSite site, OpenLibrary opened, EditSession session, FormScope scope, Unread unread,
        Consumer<String> said) {

    JobRecord job() {
        return (JobRecord) session.element();
    }

    Library library() {
        return opened.library();
    }

    LineEdits lines() {
        return new LineEdits(session);
    }

    JobEdits edits() {
        return new JobEdits(session);
    }

    Recorded recorded() {
        return new Recorded(library());
    }

    /** Does an edit, or says why it cannot be done. */
    boolean did(java.util.function.Supplier<Edit> edit) {
        try {
            session.execute(edit.get());
            return true;
        } catch (IllegalArgumentException e) {
            said.accept(e.getMessage());
            return false;
        }
    }

    /** People who work in the shop now. */
    List<Person> people() {
        return library().top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast).stream()
                .flatMap(shop -> shop.getPeople().stream()).filter(person -> person.getLeft() == null).toList();
    }

    List<HeldWrench> wrenches() {
        return new ShopWrenches(library()).held();
    }

    Optional<Address> address(org.eclipse.emf.ecore.EObject reference) {
        return library().addressOf(reference);
    }

    void open(Address address) {
        new PageOpener(site.getPage(), site.getService(LibrarySession.class)).open(address);
    }
}
