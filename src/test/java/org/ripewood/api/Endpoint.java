package org.ripewood.api;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** An address that answers, found by reading the compiled house. */
record Endpoint(String verb, String path, Method method) {

    private static final Set<Class<? extends Annotation>> NO_BODY =
            Set.of(
                    PathParam.class,
                    QueryParam.class,
                    HeaderParam.class,
                    CookieParam.class,
                    FormParam.class,
                    RestPath.class,
                    RestQuery.class,
                    RestForm.class);

    /** Looked for once: reading the whole house takes seconds. */
    private static final List<Endpoint> ALL = found();

    /** Every one of API and pages, each path with its variables as {@code {name}}. */
    static List<Endpoint> all() {
        return ALL;
    }

    private static List<Endpoint> found() {
        return new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("org.ripewood")
                        .stream()
                        .filter(found -> found.isAnnotatedWith(Path.class))
                        .map(found -> found.reflect())
                        .flatMap(Endpoint::of)
                        .toList();
    }

    private static Stream<Endpoint> of(Class<?> resource) {
        return Arrays.stream(resource.getDeclaredMethods())
                .flatMap(method -> verb(method).map(verb -> of(resource, method, verb)).stream());
    }

    private static Endpoint of(Class<?> resource, Method method, String verb) {
        var path = method.getAnnotation(Path.class);
        var whole =
                resource.getAnnotation(Path.class).value()
                        + (path == null ? "" : "/" + path.value());
        return new Endpoint(verb, plain(whole), method);
    }

    private static Optional<String> verb(Method method) {
        return Arrays.stream(method.getAnnotations())
                .map(annotation -> annotation.annotationType().getAnnotation(HttpMethod.class))
                .flatMap(Stream::ofNullable)
                .map(HttpMethod::value)
                .findFirst();
    }

    /** One slash at most, none at the end, variables without their patterns. */
    private static String plain(String path) {
        var single = ("/" + path).replaceAll("\\{\\s*(\\w+)\\s*(:[^/]*)?\\}(?=/|$)", "{$1}");
        var slashed = single.replaceAll("/+", "/");
        return slashed.length() > 1 ? slashed.replaceAll("/$", "") : slashed;
    }

    boolean api() {
        return path.startsWith("/api/");
    }

    boolean writes() {
        return !verb.equals("GET");
    }

    boolean consumes(String type) {
        var consumes = method.getAnnotation(Consumes.class);
        return consumes != null && Arrays.asList(consumes.value()).contains(type);
    }

    boolean versioned() {
        return Arrays.stream(method.getParameters())
                .map(parameter -> parameter.getAnnotation(HeaderParam.class))
                .anyMatch(header -> header != null && header.value().equals("If-Match"));
    }

    /** The record a JSON body is read into. */
    Optional<Class<?>> body() {
        return Arrays.stream(method.getParameters())
                .filter(parameter -> parameter.getType().isRecord())
                .filter(parameter -> !annotated(parameter))
                .<Class<?>>map(Parameter::getType)
                .findFirst();
    }

    private static boolean annotated(Parameter parameter) {
        return NO_BODY.stream().anyMatch(parameter::isAnnotationPresent);
    }

    @Override
    public String toString() {
        return verb + " " + path;
    }
}
