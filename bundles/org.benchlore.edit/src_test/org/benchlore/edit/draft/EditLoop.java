// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Random;

import org.benchlore.edit.Sessions;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Edits without end, keeping drafts and saving now and then, until it is killed; says what is safe by now. */
final class EditLoop {

    private static final int SAVE_EVERY = 7;

    private EditLoop() {
    }

    public static void main(String[] arguments) throws Exception {
        var library = Library.open(Path.of(arguments[0]), Path.of(arguments[1]), new NullProgressMonitor());
        var sessions = new Sessions(library, new Random(1));
        var session = sessions.open(arguments[3]);
        var autosave = new Autosave(new Drafts(Path.of(arguments[2])), sessions, Clock.systemUTC(), Duration.ZERO);
        var told = new PrintStream(System.out, true);
        for (int i = Integer.parseInt(arguments[4]);; i++) {
            session.execute(session.edits().typing(session.element(), Literals.FIELD_NOTE__TEXT, "edit " + i));
            autosave.tick();
            told.println("safe " + i);
            if (i % SAVE_EVERY == 0) {
                session.save();
            }
        }
    }
}
