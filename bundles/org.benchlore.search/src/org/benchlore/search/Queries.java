// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Stream;

import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.benchlore.model.Kind;

/** Makes the index's queries out of groups. */
final class Queries {

    private static final float LITTLE = 0.1f;
    /** Lucene allows about a thousand words in one query. */
    private static final int MOST_OTHER_FORMS = 200;
    private static final int MOST_LOOSE = 80;
    /** Kinds whose page holds a word for everything. */
    private static final List<BytesRef> LISTS = Stream.of(Kind.SHOP, Kind.MACHINE)
            .map(kind -> new BytesRef(kind.word())).toList();

    private final List<Group> groups;
    private final Vocabulary vocabulary;
    private final int mostForms;

    Queries(List<Group> groups, Vocabulary vocabulary) {
        this.groups = groups;
        this.vocabulary = vocabulary;
        this.mostForms = Math.max(2, Math.min(10, MOST_OTHER_FORMS / Math.max(1, groups.size())));
    }

    /** Asks that every group be there in one form or another; of pages of lists, that they be about it. */
    Query every() throws IOException {
        var query = new BooleanQuery.Builder();
        for (var group : groups) {
            query.add(anyForm(group), Occur.MUST);
        }
        if (groups.size() > 1 && groups.stream().allMatch(Group.Words.class::isInstance)) {
            query.add(strewn(), Occur.MUST_NOT);
        }
        addPlaces(query, groups);
        return query.build();
    }

    /** Pages of lists that hold every word, but here and there and not in what they are about: chance, not an answer. */
    private Query strewn() throws IOException {
        var about = new BooleanQuery.Builder();
        for (var group : groups) {
            for (var stem : ((Group.Words) group).leading().stems()) {
                about.add(vocabulary.term(Fields.HEAD, stem), Occur.MUST);
            }
        }
        var strewn = new BooleanQuery.Builder();
        strewn.add(new TermInSetQuery(Facet.KIND.field(), LISTS), Occur.MUST);
        strewn.add(about.build(), Occur.MUST_NOT);
        return strewn.build();
    }

    /** Asks that anything of it be there; {@code pieces} are added where they are worth it. */
    Query some(Collection<Query> pieces) throws IOException {
        var query = new BooleanQuery.Builder();
        for (var group : rarest()) {
            if (group instanceof Group.Words words) {
                for (var stem : words.own().stems()) {
                    query.add(vocabulary.term(Fields.ALL, stem), Occur.SHOULD);
                }
                otherForms(words).forEach(form -> query.add(form, Occur.SHOULD));
            } else {
                query.add(anyForm(group), Occur.SHOULD);
            }
        }
        addPlaces(query, rarest());
        pieces.forEach(piece -> query.add(piece, Occur.SHOULD));
        return query.build();
    }

    /** Of a long text only the words that tell most are looked for: the rest cost time and change little. */
    private List<Group> rarest() throws IOException {
        if (groups.size() <= MOST_LOOSE) {
            return groups;
        }
        var frequency = new HashMap<Group, Integer>();
        for (var group : groups) {
            int elements = 0;
            if (group instanceof Group.Words words) {
                for (var stem : words.own().stems()) {
                    elements = Math.max(elements, vocabulary.elements(Fields.ALL, stem));
                }
            }
            frequency.put(group, elements);
        }
        return groups.stream().distinct().sorted(Comparator.comparing(frequency::get)).limit(MOST_LOOSE).toList();
    }

    /** Tells whether {@link #some} can find anything that {@link #every} does not. */
    boolean canLoosen() {
        return groups.size() > 1 || groups.stream().anyMatch(group -> group instanceof Group.Words words
                && words.own().stems().size() > 1);
    }

    /** A word counts more where it stands in the title or in a symptom. */
    private void addPlaces(BooleanQuery.Builder query, List<Group> asked) throws IOException {
        for (var group : asked) {
            if (group instanceof Group.Words words) {
                for (var stem : words.leading().stems()) {
                    if (vocabulary.has(Fields.HEAD, stem)) {
                        query.add(new BoostQuery(vocabulary.term(Fields.HEAD, stem), Mix.HEAD), Occur.SHOULD);
                    }
                }
                if (isShortBeginning(words.beginning())) {
                    query.add(constant(term(Fields.TITLE_START, words.beginning()), Mix.BEGINS), Occur.SHOULD);
                }
            }
        }
    }

    private Query anyForm(Group group) throws IOException {
        if (group instanceof Group.Code code) {
            return code(code);
        }
        if (group instanceof Group.Number number) {
            return either(List.of(text(number.stems(), 0),
                    constant(new PrefixQuery(new Term(Fields.NUMBER, number.piece())), Mix.NUMBER)));
        }
        var words = (Group.Words) group;
        var forms = new ArrayList<Query>();
        forms.add(words.own().stems().isEmpty() ? little(words) : together(words.own().stems()));
        forms.addAll(otherForms(words));
        return either(forms);
    }

    private List<Query> otherForms(Group.Words words) throws IOException {
        var forms = new ArrayList<Query>();
        var others = new ArrayList<Query>();
        for (var form : words.other().limit(mostForms).toList()) {
            others.add(new BoostQuery(text(form.stems(), 1), form.weight()));
        }
        if (!others.isEmpty()) {
            forms.add(others.size() == 1 ? others.get(0) : new DisjunctionMaxQuery(others, 0));
        }
        if (isShortBeginning(words.beginning())) {
            forms.add(constant(term(Fields.START, words.beginning()), LITTLE));
        } else if (!words.beginning().isEmpty()) {
            forms.add(constant(new PrefixQuery(new Term(Fields.WORDS, words.beginning())), LITTLE));
        }
        return forms;
    }

    private static boolean isShortBeginning(String beginning) {
        return !beginning.isEmpty() && beginning.length() <= BeginningsFilter.LONGEST;
    }

    private Query code(Group.Code code) throws IOException {
        var forms = new ArrayList<Query>();
        for (var form : code.codes()) {
            var term = new Term(Fields.CODE, form);
            forms.add(constant(code.isBeginning() ? new PrefixQuery(term) : new TermQuery(term), Mix.CODE));
        }
        if (!code.paths().isEmpty()) {
            var paths = new TermInSetQuery(Fields.REFERENCES, code.paths().stream().map(BytesRef::new).toList());
            forms.add(constant(paths, Mix.CODE));
        }
        forms.add(text(code.stems(), 0));
        return new DisjunctionMaxQuery(forms, 0);
    }

    /** Words that stand together, or a single word. */
    private Query text(List<String> stems, int slop) throws IOException {
        return stems.size() == 1 ? vocabulary.term(Fields.ALL, stems.get(0))
                : new PhraseQuery(slop, Fields.ALL, stems.toArray(String[]::new));
    }

    private Query together(List<String> stems) throws IOException {
        if (stems.size() == 1) {
            return vocabulary.term(Fields.ALL, stems.get(0));
        }
        var all = new BooleanQuery.Builder();
        for (var stem : stems) {
            all.add(vocabulary.term(Fields.ALL, stem), Occur.MUST);
        }
        return all.build();
    }

    private static Query little(Group.Words words) {
        return constant(term(Fields.WORDS, words.typed()), LITTLE);
    }

    private static Query either(List<Query> forms) {
        if (forms.size() == 1) {
            return forms.get(0);
        }
        var query = new BooleanQuery.Builder();
        forms.forEach(form -> query.add(form, Occur.SHOULD));
        return query.build();
    }

    static Query term(String field, String word) {
        return new TermQuery(new Term(field, word));
    }

    static Query constant(Query query, float score) {
        return new BoostQuery(new ConstantScoreQuery(query), score);
    }
}
