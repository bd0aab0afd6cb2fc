// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures how well the product ranks. */
@Command(name = "rank", mixinStandardHelpOptions = true,
        description = "Ranks sets of documents with the product and its peers in one run.")
public final class RankCommand implements Callable<Integer> {

    @Parameters(paramLabel = "SET_DIR", arity = "1..*",
            description = "A folder with docs.tsv, queries.tsv (id, tab, text) and qrels.txt (query 0 document grade).")
    private List<Path> folders;

    @Option(names = "--json", description = "Print JSON, with the values of each query.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        var out = spec.commandLine().getOut();
        var all = new JsonArray();
        for (var folder : folders) {
            var set = RankingSet.read(folder);
            var report = new RankReport(set, new RankRun(spec.commandLine().getErr()).run(set));
            all.add(report.json());
            print(out, report);
        }
        if (json) {
            out.println(new GsonBuilder().setPrettyPrinting().create().toJson(all));
        } else {
            out.println("p: paired randomisation test of nDCG@10 against the product, two-sided.");
        }
        out.flush();
        return 0;
    }

    private void print(PrintWriter out, RankReport report) {
        if (!json) {
            out.println(report.text());
            out.flush();
        }
    }
}
