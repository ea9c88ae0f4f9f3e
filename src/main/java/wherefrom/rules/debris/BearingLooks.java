package wherefrom.rules.debris;

import java.util.List;
import java.util.stream.Stream;
import wherefrom.inspection.Look;

/**
 * What has been seen of the bearings.
 *
 * @param looks every look, oldest first
 * @param leftFirst what is still to be seen of the first few: the lower shells of the first and the
 *     last main, one rod shell of each crank pin
 * @param leftAll what is still to be seen of all of them
 */
public record BearingLooks(List<BearingLook> looks, List<String> leftFirst, List<String> leftAll) {
  public BearingLooks {
    looks = List.copyOf(looks);
    leftFirst = List.copyOf(leftFirst);
    leftAll = List.copyOf(leftAll);
  }

  Stream<BearingLook> that(Look look) {
    return looks.stream().filter(one -> one.look() == look);
  }
}
