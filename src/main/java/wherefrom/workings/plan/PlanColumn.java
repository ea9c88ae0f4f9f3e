package wherefrom.workings.plan;

import java.util.List;
import java.util.Optional;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;

/**
 * One worked-out column of the plan.
 *
 * @param name "now" or the what-if's name
 * @param inputs all inputs of the column
 * @param result every result with its band and what contributes to it
 * @param margins the gaps with a usual least
 * @param consequences what the column changes against now; none for now itself
 */
public record PlanColumn(
    String name,
    Inputs inputs,
    Result result,
    List<Margin> margins,
    List<WhatIfEffect> consequences)
    implements PlanAnswer {
  public PlanColumn {
    margins = List.copyOf(margins);
    consequences = List.copyOf(consequences);
  }

  /** Whether the gap or result with the key was there and is not known with the column's parts. */
  public boolean isNotKnown(String key) {
    return result.findNote(RoomAtValves.NOT_KNOWN + key).isPresent();
  }

  /** The least that a gap is known to be, where no more is known. */
  public Optional<ResultValue> findAtLeast(String key) {
    return result.findValue(key + ClearanceBasis.AT_LEAST);
  }

  /** The margins that are under their least or too near it for the uncertainty. */
  public List<Margin> listMarked() {
    return margins.stream().filter(margin -> margin.standing() != Margin.Standing.CLEAR).toList();
  }
}
