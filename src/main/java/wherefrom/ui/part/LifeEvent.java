package wherefrom.ui.part;

import java.util.List;

/**
 * Something that happened to a part.
 *
 * @param day such as {@code 14 Mar}
 * @param what happened, such as {@code came out}
 * @param times how often it happened one after the other on that day
 */
record LifeEvent(String day, String what, int times) {

  /** Goes behind those before, or is counted with the last that says the same of the same day. */
  void addTo(List<LifeEvent> events) {
    int last = events.size() - 1;
    if (last >= 0 && events.get(last).day.equals(day) && events.get(last).what.equals(what)) {
      events.set(last, new LifeEvent(day, what, events.get(last).times + times));
    } else {
      events.add(this);
    }
  }

  /** {@code photograph, 3 times}. */
  String words() {
    return times == 1 ? what : what + ", " + times + " times";
  }
}
