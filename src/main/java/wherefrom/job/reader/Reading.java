package wherefrom.job.reader;

import java.util.List;

/** Everything that was found on one picture. */
public record Reading(List<Sighting> sightings, List<Unread> unread) {
  public static final Reading NOTHING = new Reading(List.of(), List.of());

  public Reading {
    sightings = List.copyOf(sightings);
    unread = List.copyOf(unread);
  }
}
