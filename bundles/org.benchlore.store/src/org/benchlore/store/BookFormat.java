// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.TopElement;
import org.benchlore.store.FileProblem.Severity;
import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.XMLParserPool;
import org.eclipse.emf.ecore.xmi.impl.XMLParserPoolImpl;

/**
 * Reads and writes the bytes of one file. What it writes is the same for the same element: UTF-8, line feeds, one
 * attribute a line, nothing that depends on the day or the machine.
 */
public final class BookFormat {

    /** The version of the format that this program reads and writes. */
    public static final int VERSION = 1;

    private final XMLParserPool parsers = new XMLParserPoolImpl();

    /**
     * Reads a file. Never throws for what is in the file: what cannot be read becomes a problem.
     *
     * @param path path of the file below the library
     * @param bytes its bytes
     * @return the snapshot
     */
    public LoadedFile read(String path, byte[] bytes) {
        var resource = new BookResource(path);
        var problems = new ArrayList<FileProblem>();
        try {
            resource.load(new ByteArrayInputStream(bytes), BookResource.loadOptions(parsers));
        } catch (IOException | WrappedException | StackOverflowError e) {
            if (resource.getErrors().isEmpty()) {
                problems.add(Diagnosis.unreadable(path, e));
            }
        }
        resource.getErrors().forEach(error -> problems.add(Diagnosis.of(path, error)));
        var root = root(path, resource.getContents(), problems);
        root.ifPresent(top -> problems.addAll(new FileMisfits(path).of(top)));
        if (root.isEmpty() || problems.stream().anyMatch(p -> p.severity() == Severity.UNREADABLE)) {
            var reasons = problems.stream().map(p -> new FileProblem(path, p.line(), p.reason(), Severity.UNREADABLE));
            return new LoadedFile(path, Optional.empty(), Hash.of(bytes), reasons.toList());
        }
        return new LoadedFile(path, root, Hash.of(bytes), List.copyOf(problems));
    }

    private static Optional<TopElement> root(String path, List<EObject> contents, List<FileProblem> problems) {
        if (contents.size() == 1 && contents.get(0) instanceof TopElement top) {
            if (top.getId() == null) {
                problems.add(new FileProblem(path, 0, "the element has no id: give it one", Severity.UNREADABLE));
            } else if (top.getFormatVersion() != VERSION && problems.stream().noneMatch(BookFormat::isOfVersion)) {
                problems.add(wrongVersion(path, top.getFormatVersion()));
            }
            return Optional.of(top);
        }
        if (problems.isEmpty()) {
            problems.add(new FileProblem(path, 0, "the file must hold one element of the book, such as a note or a part",
                    Severity.UNREADABLE));
        }
        return Optional.empty();
    }

    private static boolean isOfVersion(FileProblem problem) {
        return problem.reason().contains("formatVersion");
    }

    private static FileProblem wrongVersion(String path, int version) {
        var reason = version == 0 ? "formatVersion is missing: write formatVersion=\"" + VERSION + "\""
                : "the file has format version " + version + ", this program knows version " + VERSION
                        + ": use a newer program";
        return new FileProblem(path, 0, reason, Severity.READ_ONLY);
    }

    /**
     * Writes an element. The element itself is not touched: a copy is written.
     *
     * @param path path of the file below the library, to which references are relative
     * @param element the element
     * @return the bytes of its file
     */
    public byte[] write(String path, TopElement element) {
        var resource = new BookResource(path);
        resource.getContents().add(copy(element));
        var bytes = new ByteArrayOutputStream();
        try {
            resource.save(bytes, BookResource.saveOptions());
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory cannot fail", e);
        }
        return bytes.toByteArray();
    }

    private static EObject copy(TopElement element) {
        var copier = new EcoreUtil.Copier(false, true);
        var copy = copier.copy(element);
        copier.copyReferences();
        return copy;
    }
}
