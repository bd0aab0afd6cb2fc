// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.edit.media.Photo;
import org.benchlore.model.Media;
import org.benchlore.ui.Failures;
import org.benchlore.ui.WindowThread;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;

/**
 * Takes pictures onto the library's shelf away from the window's thread, one after the other, and takes away again what
 * was only tried out.
 */
final class PhotoWork {

    static final int THUMB_WIDTH = 96;
    static final int THUMB_HEIGHT = 64;

    /** A picture that lies on the shelf, with a small one to be shown where that can be drawn. */
    record Taken(Photo photo, MediaShelf.Stored stored, Optional<ImageData> small) {
    }

    private interface Source {
        Photo read() throws MediaException;
    }

    private final MediaShelf shelf;
    private final WindowThread thread;
    private final Consumer<String> refuse;
    private final Set<MediaShelf.Stored> fresh = ConcurrentHashMap.newKeySet();
    private final ISchedulingRule oneByOne = new OneByOne();
    private int waiting;

    private static final class OneByOne implements ISchedulingRule {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    }

    PhotoWork(MediaShelf shelf, WindowThread thread, Consumer<String> refuse) {
        this.shelf = shelf;
        this.thread = thread;
        this.refuse = refuse;
    }

    void take(byte[] bytes, Consumer<Taken> done) {
        run(() -> Photo.of(bytes), done);
    }

    void take(Path file, Consumer<Taken> done) {
        run(() -> Photo.of(content(file)), done);
    }

    void take(Photo changed, Consumer<Taken> done) {
        run(() -> changed, done);
    }

    /** Reads what lies on the shelf already. */
    void read(Media media, Consumer<Taken> done) {
        run(() -> Photo.of(shelf.shown(media.getFile())), done);
    }

    /** A file that is too large is not even read. */
    private static byte[] content(Path file) throws MediaException {
        try {
            return Files.size(file) > MediaShelf.MOST_BYTES ? new byte[MediaShelf.MOST_BYTES + 1] : Files.readAllBytes(file);
        } catch (IOException e) {
            throw new MediaException(file.getFileName() + " cannot be read: check that it is a file and still there", e);
        }
    }

    private void run(Source source, Consumer<Taken> done) {
        waiting++;
        var job = Job.create(Messages.takingPhoto, monitor -> {
            try {
                var taken = taken(source.read());
                thread.run(() -> {
                    waiting--;
                    done.accept(taken);
                });
            } catch (MediaException e) {
                thread.run(() -> {
                    waiting--;
                    refuse.accept(e.getMessage());
                });
            }
        });
        job.setRule(oneByOne);
        job.schedule();
    }

    private Taken taken(Photo photo) throws MediaException {
        var drawn = photo.drawn();
        var isNew = !shelf.holds(drawn);
        var stored = shelf.add(drawn);
        if (isNew) {
            fresh.add(stored);
        }
        return new Taken(photo, stored, small(photo));
    }

    private static Optional<ImageData> small(Photo photo) throws MediaException {
        try {
            return Optional.of(new ImageData(new ByteArrayInputStream(photo.small(THUMB_WIDTH, THUMB_HEIGHT, true))));
        } catch (SWTException e) {
            Failures.log("A " + photo.type().ending() + " file is kept but cannot be shown here", e);
            return Optional.empty();
        }
    }

    boolean isBusy() {
        return waiting > 0;
    }

    /** Takes away what was put on the shelf here and is in use nowhere. */
    void tidy(List<Media> used) {
        var files = new HashSet<String>();
        used.forEach(media -> files.add(media.getFile()));
        fresh.stream().filter(stored -> !files.contains(stored.file())).forEach(stored -> {
            try {
                shelf.takeAway(stored);
            } catch (MediaException e) {
                Failures.log(e.getMessage(), e);
            }
        });
        fresh.clear();
    }
}
