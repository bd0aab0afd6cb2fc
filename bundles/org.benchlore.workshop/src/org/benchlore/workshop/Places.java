// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.UnaryOperator;

import org.benchlore.store.Hash;

/**
 * The user's own folders. Nothing that is not also in a library lies in the cache.
 *
 * @param cache what can be made again at any time
 * @param state what the program remembers, such as recent libraries
 * @param data the user's copy of the demonstration library
 */
public record Places(Path cache, Path state, Path data) {

    private static final String NAME = "benchlore";
    private static final int KEY_LENGTH = 16;

    /**
     * Returns the folders of the user who runs the program: below {@code BENCHLORE_HOME} or the system property
     * {@code benchlore.home} if set, else where the system keeps such things (on Linux the XDG base directories).
     *
     * @return the folders; they may not exist yet
     */
    public static Places ofUser() {
        var home = System.getProperty("benchlore.home", System.getenv("BENCHLORE_HOME"));
        return home == null || home.isBlank()
                ? ofSystem(System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv())
                : below(Path.of(home).toAbsolutePath());
    }

    /**
     * Returns folders below one folder.
     *
     * @param home the folder
     * @return {@code cache}, {@code state} and {@code data} in it
     */
    public static Places below(Path home) {
        return new Places(home.resolve("cache"), home.resolve("state"), home.resolve("data"));
    }

    static Places ofSystem(String system, Path home, Map<String, String> environment) {
        if (system.startsWith("Windows")) {
            return below(folder(environment.get("LOCALAPPDATA"), home.resolve("AppData/Local")).resolve("Benchlore"));
        }
        if (system.startsWith("Mac")) {
            var library = home.resolve("Library");
            return new Places(library.resolve("Caches/Benchlore"), library.resolve("Application Support/Benchlore/state"),
                    library.resolve("Application Support/Benchlore/data"));
        }
        UnaryOperator<String> variable = environment::get;
        return new Places(folder(variable.apply("XDG_CACHE_HOME"), home.resolve(".cache")).resolve(NAME),
                folder(variable.apply("XDG_STATE_HOME"), home.resolve(".local/state")).resolve(NAME),
                folder(variable.apply("XDG_DATA_HOME"), home.resolve(".local/share")).resolve(NAME));
    }

    private static Path folder(String variable, Path otherwise) {
        return variable == null || !Path.of(variable).isAbsolute() ? otherwise : Path.of(variable);
    }

    /**
     * Returns the folder in the cache that belongs to a library.
     *
     * @param library the library's folder
     * @return a folder that may not exist yet
     */
    public Path cacheOf(Path library) {
        return cache.resolve("libraries").resolve(key(library));
    }

    /**
     * Returns the folder in the state that takes the drafts of a library.
     *
     * @param library the library's folder
     * @return a folder that may not exist yet
     */
    public Path draftsOf(Path library) {
        return state.resolve("drafts").resolve(key(library));
    }

    private static String key(Path library) {
        try {
            var real = Files.exists(library) ? library.toRealPath() : library.toAbsolutePath().normalize();
            return Hash.of(real.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8)).substring(0, KEY_LENGTH);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("The folder " + library + " cannot be looked at", e);
        }
    }
}
