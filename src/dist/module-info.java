/**
 * The program and its libraries as the one module of its own runtime; the build puts it together,
 * nothing else compiles it. What a library names in META-INF/services stands here instead.
 */
@SuppressWarnings("module")
open module wherefrom {
  requires java.desktop;
  requires java.logging;
  requires java.management;
  requires java.xml;
  requires javafx.graphics;
  requires jdk.httpserver;
  requires jdk.unsupported;

  uses com.fasterxml.jackson.core.JsonFactory;
  uses com.fasterxml.jackson.core.ObjectCodec;
  uses com.fasterxml.jackson.databind.Module;
  uses java.nio.file.spi.FileSystemProvider;
  uses org.apache.commons.logging.LogFactory;

  provides com.fasterxml.jackson.core.JsonFactory with
      com.fasterxml.jackson.core.JsonFactory;
  provides com.fasterxml.jackson.core.ObjectCodec with
      com.fasterxml.jackson.databind.ObjectMapper;
}
