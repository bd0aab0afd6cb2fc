// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.check.Problem;
import org.benchlore.check.Suppressions;
import org.benchlore.edit.desk.QuickChange;
import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.store.LoadedFile;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.benchlore.ui.status.SavedAtOnce;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchPartSite;

/** What can be done to a problem: read its place, mend it, silence it. What was saved at once can be taken back. */
final class ProblemActions {

    private final IWorkbenchPartSite site;
    private final LibrarySession session;
    private final LastChange last;

    ProblemActions(IWorkbenchPartSite site) {
        this.site = site;
        this.session = site.getService(LibrarySession.class);
        this.last = site.getService(LastChange.class);
    }

    void open(ProblemRow row) {
        new PageOpener(site.getPage(), session).open(row.at());
    }

    /** Does the fix, in the open editor if there is one. */
    void mend(ProblemRow row) {
        if (!row.canBeMended()) {
            say(row.sort() == ProblemRow.Sort.SILENCED ? Messages.mendSilenced : Messages.mendByHand);
            return;
        }
        var fix = row.problem().flatMap(Problem::fix).orElseThrow();
        change(fix.at().path(), fix::edit, NLS.bind(Messages.mended, fix.label(), row.element()));
    }

    /** Asks why it may stay, and writes that into the shop. */
    void silence(ProblemRow row) {
        if (!row.canBeSilenced()) {
            say(row.problem().isPresent() ? Messages.alreadySilenced : Messages.filesAreNotSilenced);
            return;
        }
        var shop = session.current().flatMap(ProblemActions::shop);
        if (shop.isEmpty()) {
            say(Messages.noShop);
            return;
        }
        var problem = row.problem().get();
        new SilenceDialog(site.getShell(), row, (Shop) shop.get().root().orElseThrow(), shop.get().path(),
                (reason, by) -> change(shop.get().path(),
                        open -> Suppressions.silence(open, problem, reason, by, LocalDate.now()),
                        NLS.bind(Messages.silenced, row.element()))).open();
    }

    private static Optional<LoadedFile> shop(Opened opened) {
        var library = opened.library().library();
        return library.catalogue().rows(Kind.SHOP).findFirst().flatMap(row -> library.file(row.path()))
                .filter(file -> file.root().isPresent());
    }

    private void change(String path, QuickChange.Maker maker, String sentence) {
        session.current().ifPresent(opened -> new SavedAtOnce(site.getWorkbenchWindow())
                .make(() -> QuickChange.make(opened.library().sessions(), path, maker), sentence));
    }

    private void say(String sentence) {
        last.say(site.getWorkbenchWindow(), sentence);
    }
}
