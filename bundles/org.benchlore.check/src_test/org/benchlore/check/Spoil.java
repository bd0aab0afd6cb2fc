// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Access;
import org.benchlore.model.Element;
import org.benchlore.model.Fastening;
import org.benchlore.model.Hazard;
import org.benchlore.model.Kind;
import org.benchlore.model.Measurement;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.model.Work;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Row;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Elements of the demonstration library, read to be spoilt. */
public final class Spoil {

    private final String path;
    private final TopElement top;
    private final Map<String, Spoil> others = new LinkedHashMap<>();

    private Spoil(String path, TopElement top) {
        this.path = path;
        this.top = top;
        others.put(path, this);
    }

    /** Reads a file of the demonstration library anew. */
    public static Spoil file(String path) {
        try {
            var bytes = Files.readAllBytes(Path.of(System.getProperty("benchlore.root"), "procedures", path));
            return new Spoil(path, new BookFormat().read(path, bytes).root().orElseThrow());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Spoils another file too. */
    public Spoil other(String otherPath, Consumer<Spoil> change) {
        var other = others.computeIfAbsent(otherPath, Spoil::file);
        change.accept(other);
        return this;
    }

    /** Puts a copy of this element into a further file under another id. */
    public <T extends TopElement> T copyTo(String newPath, String newId, Class<T> type) {
        var copy = type.cast(EcoreUtil.copy(file(path).top));
        copy.setId(newId);
        others.put(newPath, new Spoil(newPath, copy));
        return copy;
    }

    /** Makes everything real but one file. */
    public void onlyInvented(String invented) {
        for (var entry : Demo.LIBRARY.catalogue().entries()) {
            other(entry.path(), file -> file.top().setInvented(file.path().equals(invented)));
        }
    }

    /** The paths of the library's procedures that have work to follow, in order. */
    public static List<String> procedures() {
        return Demo.LIBRARY.catalogue().rows(Kind.PROCEDURE).map(Row::path).sorted().filter(Spoil::hasWork).toList();
    }

    private static boolean hasWork(String path) {
        var ways = file(path).procedure().getWays();
        return !ways.isEmpty() && ways.get(0).getWork() != null;
    }

    public String path() {
        return path;
    }

    public TopElement top() {
        return top;
    }

    public Procedure procedure() {
        return (Procedure) top;
    }

    /** The only or the first work. */
    public Work work() {
        return procedure().getWays().get(0).getWork();
    }

    public <T extends EObject> T get(String id, Class<T> type) {
        var found = new ArrayList<T>();
        top.eAllContents().forEachRemaining(object -> {
            if (type.isInstance(object) && object instanceof Element element && id.equals(element.getId())) {
                found.add(type.cast(object));
            }
        });
        return found.get(0);
    }

    /** Every element of a class. */
    public <T extends EObject> List<T> all(Class<T> type) {
        var found = new ArrayList<T>();
        top.eAllContents().forEachRemaining(object -> {
            if (type.isInstance(object)) {
                found.add(type.cast(object));
            }
        });
        return found;
    }

    public Access access(String id) {
        return get(id, Access.class);
    }

    public Work work2(String id) {
        return get(id, Work.class);
    }

    public Step step(String id) {
        return get(id, Step.class);
    }

    public Fastening fastening(String id) {
        return get(id, Fastening.class);
    }

    public Hazard hazard(String id) {
        return get(id, Hazard.class);
    }

    public Measurement measurement(String id) {
        return get(id, Measurement.class);
    }

    public static Quantity quantity(String text) {
        return Quantity.parse(text);
    }

    /** An unresolved reference. */
    public static <T extends EObject> T to(EClass type, Class<T> java, String address) {
        var proxy = (InternalEObject) EcoreUtil.create(type);
        proxy.eSetProxyURI(URI.createURI("library:/" + address));
        return java.cast(proxy);
    }

    List<String> paths() {
        return List.copyOf(others.keySet());
    }

    boolean isAlone() {
        return others.size() == 1;
    }

    /** Writes every spoilt file into a library. */
    List<String> write(Path library) throws IOException {
        for (var other : others.values()) {
            var file = library.resolve(other.path);
            Files.createDirectories(file.getParent());
            Files.write(file, new BookFormat().write(other.path, other.top));
        }
        return List.copyOf(others.keySet());
    }
}
