package wherefrom.workings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;

/** What was entered, by key. */
public record Inputs(Map<String, Entry> entries) {
  public Inputs {
    entries = Map.copyOf(entries);
  }

  public static Inputs empty() {
    return new Inputs(Map.of());
  }

  public Inputs with(String key, Measured measured) {
    return withEntry(key, new Entry.Figure(measured));
  }

  /** A value with no uncertainty stated. */
  public Inputs with(String key, Amount value) {
    return with(key, Measured.of(value));
  }

  public Inputs withEntry(String key, Entry entry) {
    Map<String, Entry> more = new LinkedHashMap<>(entries);
    more.put(key, entry);
    return new Inputs(more);
  }

  /** These, with the other's entries added or put in their place. */
  public Inputs withAll(Inputs other) {
    Map<String, Entry> more = new LinkedHashMap<>(entries);
    more.putAll(other.entries);
    return new Inputs(more);
  }

  public Inputs without(String key) {
    Map<String, Entry> fewer = new LinkedHashMap<>(entries);
    fewer.remove(key);
    return new Inputs(fewer);
  }

  public Optional<Entry> find(String key) {
    return Optional.ofNullable(entries.get(key));
  }

  /** The figure entered under the key; empty where there is none, or a word. */
  public Optional<Measured> findMeasured(String key) {
    return find(key)
        .filter(Entry.Figure.class::isInstance)
        .map(entry -> ((Entry.Figure) entry).measured());
  }
}
