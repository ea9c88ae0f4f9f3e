package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.consequence.ShopWork;

class EntryCodecTest {

  @Test
  void everyKindOfEntryHasANameAndComesBackAsItWas() throws IOException {
    RandomEntries random = new RandomEntries(new Random(7));
    assertThat(RandomEntries.kinds()).hasSizeGreaterThanOrEqualTo(23);
    for (Class<?> kind : RandomEntries.kinds()) {
      for (int round = 0; round < 50; round++) {
        JobEntry entry = random.of(kind);
        assertThat(throughBytes(entry)).as(kind.getSimpleName()).isEqualTo(entry);
      }
    }
  }

  private static JobEntry throughBytes(JobEntry entry) throws IOException {
    byte[] bytes = EntryCodec.MAPPER.writeValueAsBytes(EntryCodec.body(entry));
    return EntryCodec.entry(EntryTypes.of(entry), EntryCodec.MAPPER.readTree(bytes));
  }

  @Test
  void theTableNamesTheKindsOfEntryAndNothingElse() {
    assertThat(Set.copyOf(EntryTypes.all().values()))
        .containsExactlyInAnyOrderElementsOf(
            RandomEntries.kinds().stream()
                .<Class<? extends JobEntry>>map(EntryCodecTest::kind)
                .toList());
    assertThat(EntryTypes.all().keySet())
        .allSatisfy(name -> assertThat(name).matches("[a-z]+(-[a-z]+)*"));
  }

  private static Class<? extends JobEntry> kind(Class<?> type) {
    return type.asSubclass(JobEntry.class);
  }

  /** Files of today must be read in years: these names may be added to, never changed. */
  @Test
  void namesOfVersionOneNeverChange() {
    assertThat(EntryTypes.all().keySet())
        .contains(
            "job-opened",
            "kinds-tracked",
            "tags-printed",
            "tag-reissued",
            "pieces-counted",
            "part-out",
            "part-lost",
            "part-found",
            "note-added",
            "photo-added",
            "off-for-washing",
            "back-from-washing",
            "sent-to-shop",
            "back-from-shop",
            "look-recorded",
            "decision-made",
            "part-replaced",
            "part-fitted",
            "part-unfitted",
            "stop-given",
            "place-excused",
            "section-closed",
            "taken-back");
  }

  @Test
  void valuesStandAsTheirKeys() {
    Place place = new Place(PartKind.PUSHROD, new ValveSpot(3, ValveSide.EXHAUST));
    JsonNode fitted = EntryCodec.body(new PartFitted(12, place));
    assertThat(fitted)
        .hasToString("{\"item\":12,\"place\":\"pushrod@3EX\",\"onPurpose\":\"\",\"against\":\"\"}");
    assertThat(EntryCodec.body(new DecisionMade(1, Decision.REUSE, "")).path("decision").asText())
        .isEqualTo("reuse");
    JsonNode opened =
        EntryCodec.body(
            JobOpened.of(
                "n",
                1,
                ReadyLayouts.all().get(0),
                Set.of(PartKind.ROD_SHELL, PartKind.PUSHROD, PartKind.ROCKER),
                UnitSystem.METRIC));
    assertThat(opened.path("kinds")).hasToString("[\"rocker\",\"pushrod\",\"rod-shell\"]");
    assertThat(opened.path("units").asText()).isEqualTo("metric");
  }

  @Test
  void aFieldTooManyTooFewOrOfAnotherTypeIsRefused() {
    ObjectNode more = EntryCodec.MAPPER.createObjectNode().put("item", 3).put("extra", 1);
    ObjectNode wrong = EntryCodec.MAPPER.createObjectNode().put("item", "3");
    ObjectNode broken = EntryCodec.MAPPER.createObjectNode().put("item", 3.5);
    ObjectNode none = EntryCodec.MAPPER.createObjectNode();
    ObjectNode nothing = EntryCodec.MAPPER.createObjectNode().putNull("item");
    for (ObjectNode body : List.of(more, wrong, broken, none, nothing)) {
      assertThatThrownBy(() -> EntryCodec.entry("part-out", body))
          .as(body.toString())
          .isInstanceOf(IOException.class)
          .hasMessageContaining("part-out");
    }
    ObjectNode noNote = EntryCodec.MAPPER.createObjectNode().put("item", 3);
    assertThatThrownBy(() -> EntryCodec.entry("part-lost", noNote)).hasMessageContaining("note");
    assertThat(EntryTypes.of(new PartLost(3, ""))).isEqualTo("part-lost");
  }

  @Test
  void anUnknownKindOrPlaceIsNamed() {
    ObjectNode body = EntryCodec.body(new PartOut(3)).deepCopy();
    assertThatThrownBy(() -> EntryCodec.entry("part-dreamt", body))
        .isInstanceOf(EntryCodec.UnknownTypeException.class)
        .hasMessageContaining("part-dreamt");
    ObjectNode fitted =
        EntryCodec.MAPPER
            .createObjectNode()
            .put("item", 1)
            .put("place", "pushrod@M1U")
            .put("onPurpose", "")
            .put("against", "");
    assertThatThrownBy(() -> EntryCodec.entry("part-fitted", fitted))
        .hasMessageContaining("pushrod@M1U");
  }

  /** Lines of slips and new parts from before their kinds and sizes were asked for. */
  @Test
  void fieldsThatCameLaterReadAsNotSaidInOlderFiles() throws IOException {
    assertThat(
            read(
                "shop-line-added",
                "{'visit':1,'line':2,'what':'block','count':1,'wanted':'bore','target':'3.89',"
                    + "'tolerance':'','unit':'in','keep':false}"))
        .isEqualTo(
            new ShopLineAdded(
                1,
                2,
                "block",
                1,
                "bore",
                Optional.of(Amount.of("3.89", Unit.INCH)),
                Optional.empty(),
                false,
                ShopWork.OTHER,
                List.of(),
                Optional.empty()));
    assertThat(read("sent-to-shop", "{'visit':1,'items':[3],'wanted':'measure'}"))
        .isEqualTo(new SentToShop(1, List.of(3), "measure", ShopWork.OTHER));
    assertThat(read("part-replaced", "{'oldItem':3,'newItem':75,'reason':'bent'}"))
        .isEqualTo(new PartReplaced(3, 75, "bent", Optional.empty(), PartSort.SAME));
  }

  private static JobEntry read(String type, String body) throws IOException {
    return EntryCodec.entry(type, EntryCodec.MAPPER.readTree(body.replace('\'', '"')));
  }
}
