// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.IndexOptions;
import org.apache.lucene.util.BytesRef;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;
import org.benchlore.terms.CodeReader;
import org.eclipse.emf.ecore.EObject;

/** Makes the index's documents out of a library's files. */
final class Documents {

    /** A set of words: which are there, not how often or where. */
    private static final FieldType WORD_SET = wordSet();

    private final Library library;
    private final Texts texts = new Texts();
    private final FacetValues facets;

    Documents(Library library) {
        this.library = library;
        this.facets = new FacetValues(library);
    }

    private static FieldType wordSet() {
        var type = new FieldType(TextField.TYPE_NOT_STORED);
        type.setIndexOptions(IndexOptions.DOCS);
        type.setOmitNorms(true);
        type.freeze();
        return type;
    }

    /** Returns the documents of one file: none if it cannot be read. */
    List<Document> of(Entry entry) {
        return entry.row().flatMap(row -> library.file(entry.path()).flatMap(LoadedFile::root)
                .map(top -> List.of(document(row, top, entry.hash())))).orElse(List.of());
    }

    private Document document(Row row, TopElement top, String hash) {
        var document = new Document();
        document.add(new StringField(Fields.PATH, row.path(), Field.Store.NO));
        document.add(new BinaryDocValuesField(Fields.PATH, new BytesRef(row.path())));
        document.add(new BinaryDocValuesField(Fields.HASH, new BytesRef(hash)));
        document.add(new NumericDocValuesField(Fields.WEIGHT, Weights.of(row, top)));
        facets.addTo(document, row);
        addAll(document, Fields.REFERENCES, row.references().stream().map(Address::path).distinct().toList());
        addWords(document, row, top);
        addAll(document, Fields.NUMBER, Numbers.of(top));
        return document;
    }

    private void addWords(Document document, Row row, TopElement top) {
        var text = read(String.join("\n", texts.of(top)));
        var symptoms = String.join("\n", row.symptoms());
        var own = row.title() + "\n" + symptoms + "\n" + text;
        addAll(document, Fields.CODE, codes(row, row.title() + "\n" + text));
        document.add(new TextField(Fields.HEAD, row.title() + "\n" + symptoms, Field.Store.NO));
        document.add(new TextField(Fields.ALL, body(row, symptoms, text) + "\n" + String.join("\n", about(row)),
                Field.Store.NO));
        document.add(new Field(Fields.WORDS, own, WORD_SET));
        document.add(new Field(Fields.START, own, WORD_SET));
        document.add(new Field(Fields.TITLE_START, row.title(), WORD_SET));
        document.add(new StoredField(Fields.TEXT, text));
        if (isShort(text)) {
            document.add(new Field(Fields.GRAMS, own, TextField.TYPE_NOT_STORED));
        }
    }

    /** As people read it and look for it: what a text names in braces stands by its title. */
    private String read(String text) {
        return text.indexOf('{') < 0 ? text : TextReferences.plain(text, library.catalogue());
    }

    /** First words that stand in for a title are in the text already. */
    private static String body(Row row, String symptoms, String text) {
        return text.startsWith(ElementTitle.written(row.title())) ? symptoms + "\n" + text : row.title() + "\n" + symptoms + "\n" + text;
    }

    private static boolean isShort(String text) {
        int words = 0;
        for (int i = 0; i < text.length() && words <= Mix.SHORT_TEXT; i++) {
            words += Character.isWhitespace(text.charAt(i)) ? 1 : 0;
        }
        return words <= Mix.SHORT_TEXT;
    }

    private static void addAll(Document document, String field, Collection<String> values) {
        values.forEach(value -> document.add(new StringField(field, value, Field.Store.NO)));
    }

    private static Set<String> codes(Row row, String text) {
        var codes = new LinkedHashSet<String>();
        row.codes().forEach(code -> codes.add(CodeReader.indexForm(code)));
        CodeReader.findIn(text).forEach(key -> codes.add(CodeReader.indexForm(key.text())));
        return codes;
    }

    /** Titles of what the element refers to, since people look for a note by the name of its component. */
    Set<String> about(Row row) {
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
}
