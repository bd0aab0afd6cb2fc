// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.util.BytesRef;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeReader;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Makes the index's documents out of a library's files. */
final class Documents {

    private static final Set<String> SEPARATE = Set.of("id", "title", "symptoms", "reviewedHash", "file");

    private final Library library;

    Documents(Library library) {
        this.library = library;
    }

    /** Returns the documents of one file: none if it cannot be read. */
    List<Document> of(Entry entry) {
        return entry.row().flatMap(row -> library.file(entry.path()).flatMap(LoadedFile::root)
                .map(top -> List.of(document(row, top, entry.hash())))).orElse(List.of());
    }

    private Document document(Row row, TopElement top, String hash) {
        var document = new Document();
        document.add(new StringField(Fields.PATH, row.path(), Field.Store.NO));
        document.add(new SortedDocValuesField(Fields.PATH, new BytesRef(row.path())));
        document.add(new SortedDocValuesField(Fields.HASH, new BytesRef(hash)));
        document.add(new StringField(Fields.KIND, row.kind().name(), Field.Store.NO));
        document.add(new NumericDocValuesField(Fields.WEIGHT, Weights.of(row, top)));
        addAll(document, Fields.MACHINE, machines(row));
        addAll(document, Fields.REFERENCES, row.references().stream().map(Address::path).distinct().toList());
        var text = String.join("\n", texts(top));
        addAll(document, Fields.CODE, codes(row, text));
        document.add(new TextField(Fields.TITLE, row.title(), Field.Store.NO));
        row.symptoms().forEach(symptom -> document.add(new TextField(Fields.SYMPTOM, symptom, Field.Store.NO)));
        document.add(new TextField(Fields.ABOUT, String.join("\n", about(row)), Field.Store.NO));
        document.add(new TextField(Fields.TEXT, text, Field.Store.NO));
        document.add(new StoredField(Fields.TEXT, text));
        document.add(new TextField(Fields.WORDS,
                row.title() + "\n" + String.join("\n", row.symptoms()) + "\n" + text, Field.Store.NO));
        return document;
    }

    private static void addAll(Document document, String field, Collection<String> values) {
        values.forEach(value -> document.add(new StringField(field, value, Field.Store.NO)));
    }

    private static List<String> machines(Row row) {
        return row.machines().isEmpty() ? List.of(Fields.NO_MACHINE)
                : row.machines().stream().map(Address::path).toList();
    }

    private static Set<String> codes(Row row, String text) {
        var codes = new LinkedHashSet<String>();
        row.codes().forEach(code -> codes.add(CodeReader.indexForm(code)));
        CodeReader.findIn(row.title() + "\n" + text).forEach(key -> codes.add(CodeReader.indexForm(key.text())));
        return codes;
    }

    /** Titles of what the element refers to, since people look for a note by the name of its component. */
    private Set<String> about(Row row) {
        var titles = new LinkedHashSet<String>();
        for (var target : row.references()) {
            var known = library.catalogue().at(target);
            if (known.isEmpty() || known.get().kind() == Kind.SHOP) {
                continue;
            }
            titles.add(known.get().title());
            if (!known.get().id().equals(target.id())) {
                library.element(target).ifPresent(inner -> titles.addAll(names(inner)));
            }
        }
        return titles;
    }

    private static List<String> names(EObject inner) {
        var names = new ArrayList<String>();
        if (inner instanceof Titled titled && titled.getTitle() != null) {
            names.add(titled.getTitle());
        }
        if (inner instanceof Component component) {
            names.addAll(component.getNames());
        }
        return names;
    }

    /** Every text of the element that people wrote, title and symptoms apart. */
    private static List<String> texts(TopElement top) {
        var texts = new ArrayList<String>();
        addTexts(top, texts);
        top.eAllContents().forEachRemaining(inner -> {
            if (inner instanceof Titled titled && titled.getTitle() != null) {
                texts.add(titled.getTitle());
            }
            addTexts(inner, texts);
        });
        return texts;
    }

    private static void addTexts(EObject object, List<String> texts) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (attribute.getEAttributeType().getInstanceClass() == String.class && object.eIsSet(attribute)
                    && !SEPARATE.contains(attribute.getName())) {
                var value = object.eGet(attribute);
                for (var one : value instanceof Collection<?> many ? many : List.of(value)) {
                    texts.add(one.toString());
                }
            }
        }
    }
}
