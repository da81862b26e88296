package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Reads a picture back with the JDK's own XML parser. */
final class Svg {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    private Svg() {}

    static Document parsed(Picture picture) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(picture.svg())));
        } catch (Exception broken) {
            throw new AssertionError(picture.svg(), broken);
        }
    }

    static List<Element> all(Picture picture, String name) {
        var nodes = parsed(picture).getElementsByTagName(name);
        var elements = new ArrayList<Element>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    static List<String> texts(Picture picture) {
        return all(picture, "text").stream().map(Element::getTextContent).toList();
    }

    /** What every picture owes: XML, a name and a description, numbers, nothing a page forbids. */
    static void assertSound(Picture picture) {
        var root = parsed(picture).getDocumentElement();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("aria-labelledby")).matches("p[0-9a-f]{8}-t p[0-9a-f]{8}-d");
        assertThat(picture.title()).isNotBlank();
        assertThat(picture.description()).isNotBlank();
        var marks =
                picture.svg()
                        .replaceAll("(?s)>[^<]*<", "><")
                        .replaceAll("#[0-9a-f]{6}|p[0-9a-f]{8}", "");
        assertThat(marks)
                .doesNotContain("NaN", "Infinity", "E1", "style=", "<style", "<script", "href");
        assertThat(NUMBER.matcher(marks).results().map(found -> Double.parseDouble(found.group())))
                .allSatisfy(number -> assertThat(Math.abs(number)).isLessThan(100_000));
        assertThat(picture.table().columns()).isNotEmpty();
    }
}
