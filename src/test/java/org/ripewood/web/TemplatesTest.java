package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every template must keep to, whatever it shows. */
@Tag("fast")
class TemplatesTest {

    private static final Pattern POST =
            Pattern.compile("<form[^>]*method=\"post\"[^>]*>\\s*([^\\n<]*)");

    /** The policy on content forbids it, so it would silently not work. */
    @ParameterizedTest
    @MethodSource("templates")
    void noTemplateCarriesStyleOrScript(Path template) {
        assertThat(text(template))
                .doesNotContainPattern("<script|<style|\\sstyle=|\\son[a-z]+=|javascript:");
    }

    @ParameterizedTest
    @MethodSource("templates")
    void everyFormThatChangesSomethingCarriesItsToken(Path template) {
        POST.matcher(text(template))
                .results()
                .filter(form -> !form.group().contains("/j_security_check"))
                .forEach(form -> assertThat(form.group(1)).contains("{#csrf /}"));
    }

    /** No request leaves the server's own host. */
    @ParameterizedTest
    @MethodSource("templates")
    void noTemplateReachesForAnotherHost(Path template) {
        assertThat(text(template)).doesNotContainPattern("(href|src|action)=\"(https?:)?//");
    }

    static List<Path> templates() throws IOException {
        try (var files = Files.walk(Path.of("src/main/resources/templates"))) {
            return files.filter(file -> file.toString().endsWith(".html")).toList();
        }
    }

    private static String text(Path template) {
        try {
            return Files.readString(template);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
