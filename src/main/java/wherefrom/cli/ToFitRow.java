package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Place;

/** The places that are still open, and the parts that are in, but. */
record ToFitRow(int toFit, List<Open> places, List<But> fittedBut) implements Row {

  /** A place that is open. */
  record Open(String place, String state, String tag) {}

  /** A place whose part sits in it although something stands against it. */
  record But(String place, String state, String tag, String sentence) {}

  static ToFitRow of(OpenedJob bench) {
    ToFit toFit = new ToFit(bench.job());
    List<Open> places = toFit.places().stream().map(place -> open(bench, place)).toList();
    List<But> buts = toFit.fittedBut().stream().map(one -> but(bench, one)).toList();
    return new ToFitRow(places.size(), places, buts);
  }

  private static Open open(OpenedJob bench, Place place) {
    String tag = bench.state().bench().findRightful(place).map(bench::digits).orElse("");
    return new Open(place.words(), bench.state().state(place).words(), tag);
  }

  private static But but(OpenedJob bench, ToFit.FittedBut one) {
    String state = bench.state().state(one.place()).words();
    return new But(one.place().words(), state, bench.digits(one.part()), one.sentence());
  }

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    places.forEach(each -> lines.add(Answer.cells(each.place, each.state, each.tag)));
    fittedBut.forEach(
        each -> lines.add(Answer.cells(each.place, each.state, each.tag, each.sentence)));
    lines.add(
        toFit + " to fit" + (fittedBut.isEmpty() ? "" : ", " + fittedBut.size() + " in, but"));
    return Row.lines(lines);
  }
}
