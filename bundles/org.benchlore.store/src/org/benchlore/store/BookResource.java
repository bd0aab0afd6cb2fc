// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;

import org.benchlore.model.BookPackage;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLParserPool;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLInfoImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLMapImpl;

/**
 * One file as an EMF resource. It knows the book's package and no other, follows no address, and refuses document
 * type definitions and schema locations.
 */
final class BookResource extends XMIResourceImpl {

    private static final Map<String, Boolean> HARDENED = Map.of(
            "http://apache.org/xml/features/disallow-doctype-decl", true,
            "http://xml.org/sax/features/external-general-entities", false,
            "http://xml.org/sax/features/external-parameter-entities", false,
            "http://apache.org/xml/features/nonvalidating/load-external-dtd", false);

    BookResource(String path) {
        super(LibraryUris.of(path));
        var alone = new ResourceSetImpl();
        var registry = new EPackageRegistryImpl();
        registry.put(BookPackage.eNS_URI, BookPackage.eINSTANCE);
        alone.setPackageRegistry(registry);
        alone.setURIConverter(new RefusingConverter());
        alone.getResources().add(this);
        setEncoding("UTF-8");
    }

    static Map<Object, Object> loadOptions(XMLParserPool parsers) {
        return Map.of(XMLResource.OPTION_USE_PARSER_POOL, parsers,
                XMLResource.OPTION_PARSER_FEATURES, HARDENED,
                XMLResource.OPTION_USE_LEXICAL_HANDLER, true,
                XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true,
                XMLResource.OPTION_USE_DEPRECATED_METHODS, false,
                XMLResource.OPTION_DISABLE_NOTIFY, true);
    }

    static Map<Object, Object> saveOptions() {
        return Map.of(XMLResource.OPTION_ENCODING, "UTF-8",
                XMLResource.OPTION_LINE_WIDTH, 1,
                XMLResource.OPTION_XML_MAP, longTextsAsElements(),
                XMLResource.OPTION_LINE_DELIMITER, "\n");
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new BookLoad(createXMLHelper());
    }

    @Override
    protected XMLLoad createXMLLoad(Map<?, ?> options) {
        return createXMLLoad();
    }

    @Override
    protected boolean useUUIDs() {
        return false;
    }

    private static XMLResource.XMLMap longTextsAsElements() {
        var map = new XMLMapImpl();
        for (var classifier : ((EPackage) BookPackage.eINSTANCE).getEClassifiers()) {
            if (classifier instanceof EClass type) {
                type.getEAttributes().stream().filter(BookResource::isLongText).forEach(text -> asElement(map, text));
            }
        }
        return map;
    }

    private static boolean isLongText(EAttribute attribute) {
        return attribute.getEAttributeType() == BookPackage.Literals.LONG_TEXT;
    }

    private static void asElement(XMLResource.XMLMap map, EAttribute attribute) {
        var info = new XMLInfoImpl();
        info.setXMLRepresentation(XMLResource.XMLInfo.ELEMENT);
        map.add(attribute, info);
    }

    /** Opens nothing: whatever a file asks for beside itself is refused. */
    private static final class RefusingConverter extends ExtensibleURIConverterImpl {

        @Override
        public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("Refused to open " + uri);
        }

        @Override
        public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("Refused to write " + uri);
        }

        @Override
        public boolean exists(URI uri, Map<?, ?> options) {
            return false;
        }
    }
}
