package org.ripewood.core.progress;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.StringWriter;
import java.net.URI;
import java.util.List;

import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Compiles one class from a string and makes an instance of it. */
final class InMemoryJava {

    private InMemoryJava() {}

    static Object make(String className, String source) {
        var bytes = new ByteArrayOutputStream();
        compile(className, source, bytes);
        var loader =
                new ClassLoader(InMemoryJava.class.getClassLoader()) {
                    Class<?> define() {
                        return defineClass(className, bytes.toByteArray(), 0, bytes.size());
                    }
                };
        try {
            return loader.define().getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + className, e);
        }
    }

    private static void compile(String className, String source, ByteArrayOutputStream bytes) {
        var compiler = ToolProvider.getSystemJavaCompiler();
        var said = new StringWriter();
        var options = List.of("-proc:none", "-cp", System.getProperty("java.class.path"));
        var files =
                new ForwardingJavaFileManager<JavaFileManager>(
                        compiler.getStandardFileManager(null, null, null)) {
                    @Override
                    public JavaFileObject getJavaFileForOutput(
                            Location location,
                            String name,
                            JavaFileObject.Kind kind,
                            FileObject sibling) {
                        return new Written(name, bytes);
                    }
                };
        var unit = List.of(new Text(className, source));
        if (!compiler.getTask(said, files, null, options, null, unit).call()) {
            throw new IllegalStateException("cannot compile " + className + "\n" + said);
        }
    }

    private static final class Text extends SimpleJavaFileObject {
        private final String source;

        Text(String className, String source) {
            super(URI.create("string:///" + className + ".java"), Kind.SOURCE);
            this.source = source;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
        }
    }

    private static final class Written extends SimpleJavaFileObject {
        private final ByteArrayOutputStream bytes;

        Written(String className, ByteArrayOutputStream bytes) {
            super(URI.create("bytes:///" + className + ".class"), Kind.CLASS);
            this.bytes = bytes;
        }

        @Override
        public OutputStream openOutputStream() {
            return bytes;
        }
    }
}
