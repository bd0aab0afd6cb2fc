// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.Diagnoses;
import org.benchlore.diagnose.Question;
import org.benchlore.page.Block.Banner;
import org.benchlore.page.Block.Heading;
import org.benchlore.page.Block.Tone;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiagnosisPageTest {

    @TempDir
    Path cache;

    private Assessment ask(Question question) throws Exception {
        var folder = Path.of(System.getProperty("benchlore.root"), "procedures");
        try (var library = Library.open(folder, cache, new NullProgressMonitor())) {
            return new Diagnoses(library).ask(question);
        }
    }

    private static Question fan() {
        return new Question("quillfen-s6", List.of("Vibration from the suction fan"), List.of("B207"), Optional.empty(), List.of());
    }

    private static List<String> headings(Page page) {
        return page.blocks().stream().filter(Heading.class::isInstance).map(block -> ((Heading) block).text()).toList();
    }

    @Test
    void thePageBeginsWithItsTitleAndEndsWithTheCaution() throws Exception {
        var page = new DiagnosisPage(true).of(ask(fan()));
        assertEquals(new Heading(1, "What may be wrong: Quillfen S6 street sweeper"), page.blocks().get(0));
        assertEquals(new Banner(Tone.INVENTED, Texts.INVENTED), page.blocks().get(1));
        assertEquals(new Banner(Tone.CAUTION, Assessment.CAUTION), page.blocks().get(page.blocks().size() - 1));
        assertFalse(new DiagnosisPage(false).of(ask(fan())).blocks().contains(new Banner(Tone.INVENTED, Texts.INVENTED)));
    }

    @Test
    void whatCanHurtSomebodyIsSaidAtTheCauseAndAtTheCheck() throws Exception {
        var text = new TextRenderer(100).render(new DiagnosisPage(true).of(ask(fan())));
        assertTrue(text.contains("Its failure can hurt somebody"), text);
        assertTrue(text.contains("First, since it can hurt somebody"), text);
    }

    @Test
    void theLadderFollowsTheChecksAndTheChainTheLadder() throws Exception {
        var page = new DiagnosisPage(true).of(ask(new Question("lorry-17", List.of(), List.of("4C17"),
                Optional.of("renew-pto-clutch-pack"), List.of())));
        var headings = headings(page);
        assertTrue(headings.indexOf("What to check next") > headings.indexOf("Looked like this, was not"));
        assertTrue(headings.indexOf("When all is new and it still fails") > headings.indexOf("What to check next"));
        assertTrue(headings.indexOf("All that makes it work: The take-off is taught in")
                > headings.indexOf("When all is new and it still fails"), headings.toString());
    }

    @Test
    void asHtmlEveryCauseLeadsToItsPapers() throws Exception {
        var html = new HtmlRenderer().render(new DiagnosisPage(true).of(ask(new Question("dravholm-hl26", List.of(),
                List.of("4C17"), Optional.empty(), List.of()))));
        assertTrue(html.contains("Learning fails on a fresh install"), html);
        assertTrue(html.contains("The maker knows of it"), html);
        assertTrue(html.contains("Looked like this, was not"), html);
    }
}
