package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.job.PlaceState;
import wherefrom.job.bags.CarriersAt;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.parts.BigPart;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** How a job stands, as a line of JSON in the index that stands beside its logbook. */
final class StandingLine {
  private StandingLine() {}

  /** The same in lists, as places are no keys of JSON objects. */
  private record Form(
      int engine,
      Layout layout,
      Set<PartKind> kinds,
      List<Place> places,
      List<PlaceState> states,
      List<Carrier> carriers,
      JobDay day,
      List<Integer> open,
      int unlooked,
      boolean inService,
      int due) {}

  private record Carrier(int number, BigPartKind kind, String bank, Whereabouts where) {
    static Carrier of(BigPartAt big) {
      BigPartName name = big.part().name();
      return new Carrier(big.part().number(), name.kind(), name.bank(), big.where());
    }

    BigPartAt read() {
      return new BigPartAt(new BigPart(number, new BigPartName(kind, bank, "")), where);
    }
  }

  static String of(Standing standing) {
    List<Place> places = List.copyOf(standing.states().keySet());
    Form form =
        new Form(
            standing.engine(),
            standing.layout(),
            standing.kinds(),
            places,
            places.stream().map(standing.states()::get).toList(),
            standing.carriers().all().stream().map(Carrier::of).toList(),
            standing.day(),
            List.of(JobDay.values()).stream().map(standing::open).toList(),
            standing.unlooked(),
            standing.inService(),
            standing.due());
    try {
      return EntryCodec.MAPPER.writeValueAsString(form);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a standing is always written", e);
    }
  }

  /** What {@link #of} gave; the line is sealed, so that it is nothing else. */
  static Standing read(String line) {
    try {
      Form form = EntryCodec.MAPPER.readValue(line, Form.class);
      Map<Place, PlaceState> states = new LinkedHashMap<>();
      for (int at = 0; at < form.places().size(); at++) {
        states.put(form.places().get(at), form.states().get(at));
      }
      Map<JobDay, Integer> open = new EnumMap<>(JobDay.class);
      List<JobDay> days = List.of(JobDay.values());
      for (int at = 0; at < days.size(); at++) {
        open.put(days.get(at), form.open().get(at));
      }
      return new Standing(
          form.engine(),
          form.layout(),
          form.kinds(),
          states,
          new CarriersAt(form.carriers().stream().map(Carrier::read).toList()),
          form.day(),
          open,
          form.unlooked(),
          form.inService(),
          form.due());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a sealed line is read as it was written", e);
    }
  }
}
