package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Outgoing;
import wherefrom.job.entry.JobOpened;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** The angle between the banks came later: files without it read as the usual engine. */
class LayoutVeeTest {
  @TempDir private Path folder;

  @Test
  void aLayoutFileSaysTheAngleAndAnOlderOneNeedNot() throws IOException {
    LayoutJson json = new LayoutJson();
    for (Layout layout : ReadyLayouts.all()) {
      Path file = folder.resolve(layout.name() + ".json");
      json.write(layout, Outgoing.to(file));
      ObjectNode written = (ObjectNode) EntryCodec.MAPPER.readTree(file.toFile());
      assertThat(written.path("vee").asInt(-1)).isEqualTo(layout.vee());
      assertThat(json.read(file)).isEqualTo(layout);
      written.remove("vee");
      Files.write(file, EntryCodec.MAPPER.writeValueAsBytes(written));
      assertThat(json.read(file)).isEqualTo(layout);
    }
  }

  @Test
  void anOlderLogbookDoesNotSayIt() throws IOException {
    for (Layout layout : ReadyLayouts.all()) {
      JobOpened opened = JobOpened.of("n", 1, layout, Set.of(PartKind.PUSHROD), UnitSystem.METRIC);
      ObjectNode body = (ObjectNode) EntryCodec.body(opened);
      ((ObjectNode) body.path("layout")).remove("vee");
      assertThat(EntryCodec.entry("job-opened", body)).isEqualTo(opened);
    }
  }
}
