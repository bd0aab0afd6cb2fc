// SPDX-License-Identifier: EPL-2.0
package org.benchlore.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenJDKLevel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.GenPackage;
import org.eclipse.emf.codegen.ecore.genmodel.GenResourceKind;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Writes the model's Java code from {@code model/book.ecore} into {@code src-gen}. The generator model is
 * made here and not kept in a file, so that the Ecore is the only source of the code.
 */
public final class GenerateModel {

    private static final String PROJECT = "org.benchlore.model";

    private GenerateModel() {
    }

    /**
     * Generates the code.
     *
     * @param args one argument: the folder of the model bundle
     * @throws IOException if the old code cannot be removed
     */
    public static void main(String[] args) throws IOException {
        var bundle = Path.of(args[0]).toAbsolutePath();
        var ecore = bundle.resolve("model/book.ecore");
        var output = bundle.resolve("src-gen");
        if (isNewer(output.resolve("org/benchlore/model/BookPackage.java"), ecore)) {
            return;
        }
        deleteTree(output);
        Files.createDirectories(output);
        var resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("*", new EcoreResourceFactoryImpl());
        resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
        EcorePlugin.getPlatformResourceMap().put(PROJECT, URI.createFileURI(bundle + "/"));
        GenModelPackage.eINSTANCE.eClass();
        var source = resources.getResource(URI.createPlatformResourceURI(PROJECT + "/model/book.ecore", true), true);
        var model = genModel((EPackage) source.getContents().get(0));
        source.getResourceSet().createResource(URI.createPlatformResourceURI(PROJECT + "/model/book.genmodel", true))
                .getContents().add(model);
        generate(model);
    }

    private static GenModel genModel(EPackage contents) {
        var model = GenModelFactory.eINSTANCE.createGenModel();
        model.setComplianceLevel(GenJDKLevel.JDK170_LITERAL);
        model.initialize(List.of(contents));
        model.setModelName("Book");
        model.setModelPluginID(PROJECT);
        model.setModelDirectory("/" + PROJECT + "/src-gen");
        model.setBundleManifest(false);
        model.setUpdateClasspath(false);
        model.setCreationCommands(false);
        model.setCreationIcons(false);
        model.setSuppressGenModelAnnotations(true);
        model.setCopyrightText("SPDX-License-Identifier: EPL-2.0");
        model.setOperationReflection(false);
        var genPackage = model.getGenPackages().get(0);
        genPackage.setPrefix("Book");
        genPackage.setBasePackage("org.benchlore");
        genPackage.setLiteralsInterface(true);
        genPackage.setLoadInitialization(false);
        genPackage.setResource(GenResourceKind.NONE_LITERAL);
        model.reconcile();
        model.setCanGenerate(true);
        return model;
    }

    private static void generate(GenModel model) {
        var problems = model.validate();
        if (!problems.isOK()) {
            throw new IllegalStateException("The model cannot be generated: " + problems.getMessage());
        }
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(
                GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
        var generator = new Generator();
        generator.setInput(model);
        generate(generator, model.getGenPackages().get(0));
    }

    private static void generate(Generator generator, GenPackage genPackage) {
        var result = generator.generate(genPackage, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE,
                new BasicMonitor.Printing(System.err));
        if (result.getSeverity() != Diagnostic.OK) {
            throw new IllegalStateException("The model code was not generated: " + result);
        }
    }

    private static boolean isNewer(Path made, Path source) throws IOException {
        return Files.exists(made)
                && Files.getLastModifiedTime(made).compareTo(Files.getLastModifiedTime(source)) > 0;
    }

    private static void deleteTree(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (var paths = Files.walk(folder)) {
            for (var path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
