// SPDX-License-Identifier: EPL-2.0
package org.benchlore.osgi.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

import org.benchlore.search.Query;
import org.benchlore.workshop.Places;
import org.benchlore.workshop.Use;
import org.benchlore.workshop.Workshop;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/** What only shows inside OSGi: class spaces, nested jars and services. */
class BundlesTest {

    private static final BundleContext CONTEXT = FrameworkUtil.getBundle(BundlesTest.class).getBundleContext();

    private static Bundle bundle(String room) {
        return Arrays.stream(CONTEXT.getBundles())
                .filter(bundle -> ("org.benchlore." + room).equals(bundle.getSymbolicName())).findFirst().orElseThrow();
    }

    @Test
    void everyHeadlessBundleStarts() throws Exception {
        for (var room : List.of("measure", "terms", "torque", "model", "store", "search", "edit", "page", "workshop",
                "cli")) {
            bundle(room).start(Bundle.START_TRANSIENT);
            assertEquals(Bundle.ACTIVE, bundle(room).getState(), room);
        }
    }

    @Test
    void noWindowBundleIsNeeded() {
        assertEquals(List.of(), Arrays.stream(CONTEXT.getBundles()).map(Bundle::getSymbolicName)
                .filter(name -> name.contains("swt") || name.contains("jface")).toList());
    }

    /** The library classes stay inside the search bundle, and their look-ups of services work there. */
    @Test
    void lucenesLookUpsWorkInItsBundle() throws Exception {
        var codecs = names("org.apache.lucene.codecs.Codec", "availableCodecs");
        assertTrue(codecs.contains("Lucene912"), codecs.toString());
        var formats = names("org.apache.lucene.codecs.PostingsFormat", "availablePostingsFormats");
        assertTrue(formats.contains("Lucene912"), formats.toString());
        var tokenizers = names("org.apache.lucene.analysis.TokenizerFactory", "availableTokenizers");
        assertTrue(tokenizers.contains("standard"), tokenizers.toString());
        var filters = names("org.apache.lucene.analysis.TokenFilterFactory", "availableTokenFilters");
        assertTrue(filters.stream().anyMatch("porterStem"::equalsIgnoreCase), filters.toString());
    }

    @SuppressWarnings("unchecked")
    private static Set<String> names(String type, String method) throws Exception {
        return (Set<String>) bundle("search").loadClass(type).getMethod(method).invoke(null);
    }

    @Test
    void theMainJobRunsInsideOsgi() throws Exception {
        var home = Files.createTempDirectory("benchlore-osgi");
        try {
            var workshop = new Workshop(Places.below(home));
            try (var open = workshop.open(workshop.demonstration(), Use.WORK, new NullProgressMonitor())) {
                var hit = open.search().find(Query.of("learning fails on a fresh install")).hits().get(0);
                var page = open.pages().of(open.library().top(hit.row().id()).orElseThrow());
                assertTrue(page.title().contains("suspect hydraulic actuator"), page.title());
            }
        } finally {
            delete(home);
        }
    }

    private static void delete(Path folder) throws Exception {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
