// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;

import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Evidence over files that change. */
class FollowingTest {

    private static final String JOB = "jobs/2026/job-2026-one-aaaa.xmi";

    @TempDir
    Path folder;

    private void write(String path, String xml) throws Exception {
        Files.createDirectories(folder.resolve("library").resolve(path).getParent());
        Files.writeString(folder.resolve("library").resolve(path), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + xml.replace("%s", "xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\""
                + " xmlns:book=\"urn:benchlore:book:1\" formatVersion=\"1\" title=\"T\"") + "\n");
    }

    private static int tries(Evidence evidence) {
        return evidence.about(Question.of(TestBook.ACTUATOR, TestBook.TODAY), CountingRules.usual()).left().of();
    }

    @Test
    void filesThatComeAndGoAreCountedUntilItIsClosed() throws Exception {
        var job = "<book:JobRecord %s id=\"job-2026-one-aaaa\" state=\"CLOSED\" opened=\"2026-01-07\">"
                + "<unit href=\"../../units/u.xmi#u\"/><left><component href=\"../../machines/lorry.xmi#actuator\"/>"
                + "<confirmedBy href=\"../../shop.xmi#jp\"/></left></book:JobRecord>";
        write("shop.xmi", "<book:Shop %s id=\"shop\"/>");
        write(JOB, job);
        var monitor = new NullProgressMonitor();
        try (var library = Library.open(folder.resolve("library"), folder.resolve("cache"), monitor)) {
            var evidence = Evidence.following(library);
            assertEquals(1, tries(evidence));
            write(JOB.replace("-one-", "-two-"), job.replace("-one-", "-two-").replace("units/u.xmi#u", "units/v.xmi#v"));
            library.refresh(monitor);
            assertEquals(2, tries(evidence));
            Files.delete(folder.resolve("library").resolve(JOB));
            library.refresh(monitor);
            assertEquals(1, tries(evidence));
            evidence.close();
            write(JOB, job);
            library.refresh(monitor);
            assertEquals(1, tries(evidence));
        }
    }
}
