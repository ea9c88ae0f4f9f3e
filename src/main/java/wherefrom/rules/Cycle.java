package wherefrom.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.text.Words;

/**
 * Parts that sit in each other's places: a chain of moves, each part to its own place. A closed
 * chain is a cycle of the permutation and needs one part laid aside; an open chain starts at a
 * place that is free.
 *
 * @param moves in the order in which to make them
 * @param closed true when the first part must be laid aside to free its place
 */
public record Cycle(List<Move> moves, boolean closed) {

  /** A part that sits in another place than its own. */
  public record Move(Part part, Place from) {
    public Place to() {
      return part.home();
    }
  }

  public Cycle {
    moves = List.copyOf(moves);
  }

  /** The shortest way out of everything that sits in a wrong place. */
  public static List<Cycle> of(Map<Place, Part> fitted) {
    Map<Place, Move> wrong = new LinkedHashMap<>();
    fitted.forEach(
        (place, part) -> {
          if (!part.home().equals(place)) {
            wrong.put(place, new Move(part, place));
          }
        });
    List<Cycle> cycles = new ArrayList<>();
    Set<Place> done = new HashSet<>();
    for (Move start : openStarts(wrong.values(), fitted)) {
      cycles.add(new Cycle(follow(start, wrong, done), false));
    }
    for (Move start : wrong.values()) {
      if (!done.contains(start.from())) {
        cycles.add(new Cycle(closedFrom(start, wrong, done), true));
      }
    }
    return cycles;
  }

  /** The parts whose own place is free, or held by a part that belongs there. */
  private static List<Move> openStarts(Collection<Move> wrong, Map<Place, Part> fitted) {
    return wrong.stream()
        .filter(
            move -> {
              Part there = fitted.get(move.to());
              return there == null || there.home().equals(move.to());
            })
        .toList();
  }

  /** Moves backwards: once a part has gone home, its former place is free for its own part. */
  private static List<Move> follow(Move start, Map<Place, Move> wrong, Set<Place> done) {
    List<Move> moves = new ArrayList<>();
    Move move = start;
    while (move != null && done.add(move.from())) {
      moves.add(move);
      Place freed = move.from();
      move =
          wrong.values().stream()
              .filter(next -> next.to().equals(freed) && !done.contains(next.from()))
              .findFirst()
              .orElse(null);
    }
    return moves;
  }

  private static List<Move> closedFrom(Move start, Map<Place, Move> wrong, Set<Place> done) {
    List<Move> moves = new ArrayList<>();
    Move move = start;
    while (move != null && done.add(move.from())) {
      moves.add(move);
      move = wrong.get(move.to());
    }
    return moves;
  }

  /** The way out in words: "Take 3 EX out, it belongs at 5 EX. ..." */
  public String words() {
    StringBuilder words = new StringBuilder();
    for (Move move : moves) {
      words
          .append("Take ")
          .append(move.part().kind().word())
          .append(" number ")
          .append(Words.number(move.part().item()))
          .append(" out of ")
          .append(move.from().figures())
          .append(": it belongs at ")
          .append(move.to().figures())
          .append(". ");
    }
    return words.toString().strip();
  }
}
