// SPDX-License-Identifier: EPL-2.0
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Turns the command line as Tycho puts it together into what its user gets: a start script, one jar that names the class
 * path, and jars without signatures. Nothing of it runs inside OSGi; and Java keeps classes of signed jars, and of
 * folders, out of the archive that makes the start short.
 *
 * <p>Arguments: folder with the products, folder with the start scripts, file with the licence, build's version.
 */
final class TerminalProduct {

    private static final Pattern SIGNATURE = Pattern.compile("META-INF/[^/]+\\.(SF|RSA|DSA|EC)|META-INF/SIG-[^/]+");
    private static final List<String> FOR_OSGI_ONLY = List.of("p2", "configuration", "features", "artifacts.xml",
            ".eclipseproduct");
    private static final String MAIN = "org.benchlore.cli.Main";

    private final Path product;
    private final Path plugins;

    private TerminalProduct(Path product) {
        this.product = product;
        this.plugins = product.resolve("plugins");
    }

    public static void main(String[] arguments) throws IOException {
        for (var found : productsIn(Path.of(arguments[0]))) {
            var product = new TerminalProduct(found);
            product.dropWhatIsForOsgi();
            product.turnFoldersIntoJars();
            product.dropSignatures();
            product.nameClassPath(arguments[3]);
            product.addFiles(Path.of(arguments[1]), Path.of(arguments[2]), arguments[3]);
        }
    }

    /** One folder for each system. On macOS the content lies deeper, in an application that this one is not. */
    private static List<Path> productsIn(Path root) throws IOException {
        var found = sorted(root, 3, path -> Files.isDirectory(path) && root.relativize(path).getNameCount() == 3);
        for (var product : found) {
            var deep = product.resolve("Eclipse.app/Contents/Eclipse");
            if (Files.isDirectory(deep)) {
                for (var child : sorted(deep, 1, path -> !path.equals(deep))) {
                    Files.move(child, product.resolve(child.getFileName()));
                }
                delete(product.resolve("Eclipse.app"));
            }
        }
        return found;
    }

    private void dropWhatIsForOsgi() throws IOException {
        for (var name : FOR_OSGI_ONLY) {
            delete(product.resolve(name));
        }
    }

    /** The classes of a bundle that is a folder go into a jar beside it; the jars nested in it stay where they are. */
    private void turnFoldersIntoJars() throws IOException {
        for (var bundle : sorted(plugins, 1, path -> Files.isDirectory(path) && !path.equals(plugins))) {
            var files = sorted(bundle, Integer.MAX_VALUE, path -> Files.isRegularFile(path) && !isJar(path));
            try (var jar = new JarOutputStream(Files.newOutputStream(Path.of(bundle + ".jar")))) {
                for (var file : files) {
                    var name = bundle.relativize(file).toString().replace('\\', '/');
                    put(jar, name, Files.getLastModifiedTime(file).toMillis(), Files.readAllBytes(file));
                }
            }
            deleteAllBut(bundle, TerminalProduct::isJar);
        }
    }

    private void dropSignatures() throws IOException {
        for (var jar : jars()) {
            if (isSigned(jar)) {
                var unsigned = Path.of(jar + ".unsigned");
                copyWithoutSignature(jar, unsigned);
                Files.delete(jar);
                Files.move(unsigned, jar);
            }
        }
    }

    private static boolean isSigned(Path path) throws IOException {
        try (var jar = new JarFile(path.toFile(), false)) {
            return jar.stream().anyMatch(entry -> SIGNATURE.matcher(entry.getName()).matches());
        }
    }

    private static void copyWithoutSignature(Path from, Path to) throws IOException {
        try (var jar = new JarFile(from.toFile(), false); var out = new JarOutputStream(Files.newOutputStream(to))) {
            for (var entry : jar.stream().toList()) {
                if (!SIGNATURE.matcher(entry.getName()).matches()) {
                    var bytes = jar.getInputStream(entry).readAllBytes();
                    put(out, entry.getName(), entry.getTime(),
                            entry.getName().equals(JarFile.MANIFEST_NAME) ? mainSection(bytes) : bytes);
                }
            }
        }
    }

    /** What follows the first empty line are the sums of single files. */
    private static byte[] mainSection(byte[] manifest) {
        var text = new String(manifest, StandardCharsets.UTF_8).replace("\r\n", "\n");
        return (text.split("\n\n", 2)[0].stripTrailing() + "\n\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Native access is Lucene's, which newer Javas warn of otherwise. */
    private void nameClassPath(String version) throws IOException {
        var manifest = new Manifest();
        var attributes = manifest.getMainAttributes();
        attributes.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        attributes.put(Attributes.Name.MAIN_CLASS, MAIN);
        attributes.put(Attributes.Name.CLASS_PATH, jars().stream()
                .map(jar -> product.relativize(jar).toString().replace('\\', '/')).collect(Collectors.joining(" ")));
        attributes.put(Attributes.Name.IMPLEMENTATION_VERSION, version);
        attributes.putValue("Enable-Native-Access", "ALL-UNNAMED");
        new JarOutputStream(Files.newOutputStream(product.resolve("benchlore.jar")), manifest).close();
    }

    private void addFiles(Path scripts, Path licence, String version) throws IOException {
        Files.copy(licence, product.resolve("LICENSE"));
        Files.writeString(product.resolve("build"), version + "\n");
        if (product.getParent().getParent().getFileName().toString().equals("win32")) {
            Files.copy(scripts.resolve("benchlore.cmd"), product.resolve("benchlore.cmd"));
        } else {
            var script = Files.copy(scripts.resolve("benchlore"), product.resolve("benchlore"));
            if (!script.toFile().setExecutable(true, false)) {
                throw new IOException(script + " cannot be made executable");
            }
        }
    }

    private List<Path> jars() throws IOException {
        return sorted(plugins, Integer.MAX_VALUE, path -> Files.isRegularFile(path) && isJar(path));
    }

    private static boolean isJar(Path path) {
        return path.toString().endsWith(".jar");
    }

    private static void put(JarOutputStream out, String name, long time, byte[] bytes) throws IOException {
        var entry = new JarEntry(name);
        entry.setTime(time);
        out.putNextEntry(entry);
        out.write(bytes);
        out.closeEntry();
    }

    private static List<Path> sorted(Path root, int depth, Predicate<Path> wanted) throws IOException {
        try (var paths = Files.walk(root, depth)) {
            return paths.filter(wanted).sorted().toList();
        }
    }

    private static void delete(Path root) throws IOException {
        if (Files.exists(root)) {
            deleteAllBut(root, path -> false);
        }
    }

    private static void deleteAllBut(Path root, Predicate<Path> kept) throws IOException {
        var all = sorted(root, Integer.MAX_VALUE, path -> true);
        for (int i = all.size() - 1; i >= 0; i--) {
            var path = all.get(i);
            if (all.stream().filter(kept).noneMatch(k -> k.startsWith(path))) {
                Files.delete(path);
            }
        }
    }
}
