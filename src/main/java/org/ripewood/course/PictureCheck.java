package org.ripewood.course;

import java.io.ByteArrayInputStream;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Whether a file is a picture that may stand in lessons: a PNG, or an SVG that draws and does
 * nothing else. What it may be made of is a closed list, so what nobody thought of is refused.
 */
final class PictureCheck {

    static final String FOLDER = "lessons/pictures/";

    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*\\.(svg|png)");

    /** PNG (Third Edition), 5.2: the signature. */
    private static final byte[] PNG = HexFormat.of().parseHex("89504e470d0a1a0a");

    private static final String SVG_NAMESPACE = "http://www.w3.org/2000/svg";

    private static final Set<String> ELEMENTS =
            Set.of(
                    "svg",
                    "title",
                    "desc",
                    "g",
                    "path",
                    "rect",
                    "circle",
                    "ellipse",
                    "line",
                    "polyline",
                    "polygon",
                    "text",
                    "tspan");

    private static final Set<String> ATTRIBUTES =
            Set.of(
                    "viewBox",
                    "width",
                    "height",
                    "role",
                    "x",
                    "y",
                    "x1",
                    "y1",
                    "x2",
                    "y2",
                    "cx",
                    "cy",
                    "r",
                    "rx",
                    "ry",
                    "d",
                    "points",
                    "transform",
                    "fill",
                    "fill-opacity",
                    "stroke",
                    "stroke-width",
                    "stroke-dasharray",
                    "stroke-linecap",
                    "stroke-linejoin",
                    "opacity",
                    "font-family",
                    "font-size",
                    "font-weight",
                    "text-anchor");

    private final Faults faults;

    PictureCheck(Faults faults) {
        this.faults = faults;
    }

    static boolean isIn(String path) {
        return path.startsWith(FOLDER);
    }

    /** The picture, or nothing and what is wrong with it. */
    Optional<LessonPicture> check(String path, byte[] bytes) {
        var name = path.substring(FOLDER.length());
        if (!NAME.matcher(name).matches()) {
            faults.add(
                    path,
                    0,
                    "the name \"%s\"".formatted(name),
                    "small letters, digits and hyphens, ending in .svg or .png");
            return Optional.empty();
        }
        var svg = name.endsWith(".svg");
        if (svg ? draws(path, bytes) : isPng(path, bytes)) {
            var type = svg ? LessonPicture.Type.SVG : LessonPicture.Type.PNG;
            return Optional.of(new LessonPicture(name, type, bytes));
        }
        return Optional.empty();
    }

    private boolean isPng(String path, byte[] bytes) {
        var png =
                bytes.length > PNG.length
                        && Arrays.equals(PNG, 0, PNG.length, bytes, 0, PNG.length);
        if (!png) {
            faults.add(path, 0, "bytes that are no PNG", "a PNG picture");
        }
        return png;
    }

    private boolean draws(String path, byte[] bytes) {
        try {
            var reader = factory().createXMLStreamReader(new ByteArrayInputStream(bytes));
            var depth = 0;
            while (reader.hasNext()) {
                var event = reader.next();
                var wrong =
                        event == XMLStreamConstants.START_ELEMENT
                                ? element(reader, depth++)
                                : other(event);
                if (event == XMLStreamConstants.END_ELEMENT) {
                    depth--;
                }
                if (!wrong.isEmpty()) {
                    faults.add(
                            path,
                            reader.getLocation().getLineNumber(),
                            wrong,
                            "an SVG that only draws");
                    return false;
                }
            }
            return true;
        } catch (XMLStreamException e) {
            var at = e.getLocation();
            faults.add(path, at == null ? 0 : at.getLineNumber(), "broken XML", "an SVG picture");
            return false;
        }
    }

    /** No document type, so no entities, and nothing fetched. */
    private static XMLInputFactory factory() {
        var factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    /** What is wrong with an element; empty when nothing is. */
    private static String element(XMLStreamReader reader, int depth) {
        var name = reader.getLocalName();
        if (!SVG_NAMESPACE.equals(reader.getNamespaceURI())
                || !ELEMENTS.contains(name)
                || (depth == 0) != name.equals("svg")) {
            return "the element <%s>".formatted(name);
        }
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            var attribute = reader.getAttributeLocalName(i);
            var value = reader.getAttributeValue(i).toLowerCase(Locale.ROOT);
            if (reader.getAttributeNamespace(i) != null || !ATTRIBUTES.contains(attribute)) {
                return "the attribute \"%s\"".formatted(attribute);
            }
            if (value.contains("(") && !attribute.equals("transform")) {
                return "\"%s\" in %s".formatted(value, attribute);
            }
        }
        return "";
    }

    private static String other(int event) {
        return switch (event) {
            case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE -> "a document type";
            case XMLStreamConstants.PROCESSING_INSTRUCTION -> "a processing instruction";
            default -> "";
        };
    }
}
