package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.server.TestServer;

/** A job moves from a folder to the server and back, and stays the same to the byte. */
class ThereAndBackTest {
  @TempDir Path folder;
  private Shop here;
  private Shop server;
  private Shop back;
  private String job;

  @BeforeEach
  void begin() throws IOException {
    here = new Shop(folder.resolve("here"));
    server = Shop.on(TestServer.empty(), folder.resolve("there"));
    back = new Shop(folder.resolve("back"));
    job = here.begin("engine");
    here.takeApart(job);
    String tag = here.codes(job, "cylinder 3, exhaust, pushrod").tag();
    here.right("note", "--job", job, "--text", "bent, 0.3 mm – see photo", tag);
    Path photo = folder.resolve("photo.png");
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
    here.right("photo", "--job", job, tag, photo.toString());
    here.right("undo", "--job", job);
    here.right("photo", "--job", job, tag, photo.toString());
  }

  /** Exports a job; every file of it but the paper that says when it was exported. */
  private Map<String, String> exported(Shop from, String of, String name) throws IOException {
    Path file = folder.resolve(name);
    from.right("export", "--job", of, "--out", file.toString());
    return contents(file);
  }

  private static Map<String, String> contents(Path zip) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : file.stream().toList()) {
        try (InputStream in = file.getInputStream(entry)) {
          contents.put(entry.getName(), HexFormat.of().formatHex(in.readAllBytes()));
        }
      }
    }
    return contents;
  }

  private String imported(Shop into, String file) {
    into.right("import", folder.resolve(file).toString(), "--folder", into.folder.toString());
    return into.right("job", "list", "--folder", into.folder.toString()).rows().get(0)[0];
  }

  @Test
  void whatGoesToTheServerAndComesBackIsTheSameToTheByte() throws IOException {
    Map<String, String> first = exported(here, job, "first.zip");
    Map<String, String> second = exported(server, imported(server, "first.zip"), "second.zip");
    Map<String, String> third = exported(back, imported(back, "second.zip"), "third.zip");
    assertThat(first).hasSizeGreaterThan(2);
    assertThat(second).isEqualTo(first);
    assertThat(third).isEqualTo(first);
  }

  @Test
  void whatWasWrittenOnTheServerComesBackTheSameAndWorkGoesOn() throws IOException {
    exported(here, job, "first.zip");
    String there = imported(server, "first.zip");
    String tag = here.codes(job, "cylinder 5, exhaust, pushrod").tag();
    server.right("note", "--job", there, "--text", "written on the server", tag);
    Map<String, String> second = exported(server, there, "second.zip");
    String again = imported(back, "second.zip");
    assertThat(exported(back, again, "third.zip")).isEqualTo(second);
    back.right("note", "--job", again, "--text", "written at home", tag);
    assertThat(back.right("check", "--job", again).lines()).isNotNull();
  }
}
