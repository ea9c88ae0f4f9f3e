package wherefrom.job;

import java.util.Optional;

/** Names of the other jobs on the shelf, to say whose a foreign tag is. */
@FunctionalInterface
public interface JobNames {
  Optional<String> find(int engine);
}
