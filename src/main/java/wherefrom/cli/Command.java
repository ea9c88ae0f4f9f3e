package wherefrom.cli;

import java.io.IOException;

/** One command. */
interface Command {
  Usage usage();

  /**
   * Carries out a call.
   *
   * @throws BadInput when something in the call is wrong; nothing was changed
   * @throws IOException with a sentence, or what the system says of a file
   */
  Status run(Call call, Answer answer) throws BadInput, IOException;
}
