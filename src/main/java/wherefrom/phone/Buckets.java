package wherefrom.phone;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** A bucket for each address that has not joined; the longest unused is forgotten. */
final class Buckets {
  private static final int MOST = 256;

  private final Limits limits;
  private final LongSupplier nanos;
  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > MOST;
        }
      };

  Buckets(Limits limits, LongSupplier nanos) {
    this.limits = limits;
    this.nanos = nanos;
  }

  synchronized boolean take(String address) {
    long now = nanos.getAsLong();
    return buckets
        .computeIfAbsent(address, one -> new Bucket(limits.burst(), limits.perSecond(), now))
        .take(now);
  }
}
