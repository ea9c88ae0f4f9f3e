package wherefrom.engine;

import java.util.List;

/**
 * A row of cylinders under one head.
 *
 * @param name left or right as seen from the flywheel end, or another word for a single row
 * @param cylinders the cylinder numbers, front to rear; the front is the end opposite the flywheel
 * @param valves the valve order front to rear, a letter E or I for each valve, such as {@code
 *     EIIEEIIE}
 */
public record Bank(String name, List<Integer> cylinders, String valves) {
  public Bank {
    cylinders = List.copyOf(cylinders);
  }
}
