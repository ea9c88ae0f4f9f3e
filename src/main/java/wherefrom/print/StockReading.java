package wherefrom.print;

import java.util.List;

/** What came of reading a stock file. */
sealed interface StockReading {

  /** A stock that can be printed on. */
  record Good(LabelStock stock) implements StockReading {}

  /** A stock that cannot; at least one fault. */
  record Bad(List<StockFault> faults) implements StockReading {
    public Bad {
      faults = List.copyOf(faults);
    }
  }
}
