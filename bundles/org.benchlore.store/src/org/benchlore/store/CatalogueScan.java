// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Catalogue.Stamp;
import org.benchlore.store.FileProblem.Severity;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;

/** Brings a catalogue up to date: only files whose stamp has changed are read again. */
final class CatalogueScan {

    private final Path root;
    private final BookFormat format;

    CatalogueScan(Path root, BookFormat format) {
        this.root = root;
        this.format = format;
    }

    /** Returns the entries of the library as it lies on the disk now. */
    SortedMap<String, Entry> scan(SortedMap<String, Entry> known, IProgressMonitor monitor) throws IOException {
        var stamps = LibraryFiles.list(root);
        var progress = SubMonitor.convert(monitor, stamps.size());
        var entries = new TreeMap<String, Entry>();
        int number = 0;
        for (var file : stamps.entrySet()) {
            if (progress.isCanceled()) {
                throw new OperationCanceledException();
            }
            progress.subTask(++number + " of " + stamps.size());
            var old = known.get(file.getKey());
            entries.put(file.getKey(), old != null && old.stamp().equals(file.getValue())
                    ? old : entry(file.getKey(), file.getValue()));
            progress.worked(1);
        }
        return entries;
    }

    private Entry entry(String path, Stamp stamp) {
        try {
            return entry(stamp, format.read(path, Files.readAllBytes(root.resolve(path))));
        } catch (IOException e) {
            var problem = new FileProblem(path, 0, "the file cannot be opened: check its permissions ("
                    + e.getClass().getSimpleName() + ")", Severity.UNREADABLE);
            return new Entry(path, stamp, "", Optional.empty(), List.of(problem));
        }
    }

    static Entry entry(Stamp stamp, LoadedFile file) {
        var row = file.root().flatMap(top -> Kind.of(top.eClass()).map(kind -> Facts.of(file.path(), top, kind)));
        return new Entry(file.path(), stamp, file.hash(), row, file.problems());
    }
}
