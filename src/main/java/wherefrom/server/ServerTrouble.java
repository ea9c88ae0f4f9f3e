package wherefrom.server;

import java.net.UnknownHostException;
import java.sql.SQLException;
import java.util.List;
import wherefrom.job.LogbookException;
import wherefrom.job.UnsentException;
import wherefrom.job.settings.ServerAddress;

/**
 * Why a shared server did not do as it was asked, by the SQLSTATE that it gave (PostgreSQL's
 * manual, appendix A): what is wrong, and what to do. The server's own words are not repeated, as
 * they may hold what was sent to it.
 */
enum ServerTrouble {
  NO_SUCH_HOST(
      Outcome.UNHEARD,
      "There is no computer {host} on this network. Check the server's address, and that it is on."),
  STOPPED(
      Outcome.UNHEARD,
      "The shared server {host} is being stopped or started. Wait until it runs.",
      "57P01",
      "57P02",
      "57P03",
      "57P05"),
  NO_PASSWORD(
      Outcome.REFUSED,
      "The server {host} asks for a password. Put it into ~/.pgpass or PGPASSWORD.",
      "08004"),
  WRONG_PASSWORD(
      Outcome.REFUSED,
      "The server {host} does not let this machine in. Check name and password.",
      "28P01"),
  NOT_LET_IN(
      Outcome.REFUSED,
      "The server {host} does not know your name there, or no line of its pg_hba.conf lets this"
          + " machine in. Check the name, or add the line.",
      "28"),
  NO_DATABASE(
      Outcome.REFUSED,
      "The server {host} has no database {database}. Check the name, or make it with createdb.",
      "3D000"),
  NO_RIGHTS(
      Outcome.REFUSED,
      "Your name on the server {host} may not do this in the database {database}. Make it the"
          + " owner of the database and of what is in it.",
      "42501"),
  FOR_READING_ONLY(
      Outcome.REFUSED,
      "The shared server {host} is set for reading only, or is a copy of another. Use the server"
          + " that is written to, or turn default_transaction_read_only off.",
      "25006"),
  DISK_FULL(
      Outcome.REFUSED,
      "The disk of the shared server {host} is full. Make room on it, then do it again.",
      "53100"),
  TOO_MANY(
      Outcome.NOT_NOW,
      "The shared server {host} takes no more connections. Close a program that uses it, or raise"
          + " its max_connections.",
      "53300"),
  SHORT(
      Outcome.NOT_NOW,
      "The shared server {host} is short of memory. Close other programs on it, then do it again.",
      "53",
      "54"),
  AT_ONCE(
      Outcome.NOT_NOW,
      "Others wrote on the shared server {host} at the same moment. Do it again.",
      "40",
      "55P03"),
  TOOK_TOO_LONG(
      Outcome.REFUSED,
      "The shared server {host} gave up, as it took too long. Do it again.",
      "57014"),
  OTHER_TABLES(
      Outcome.REFUSED,
      "The tables in the database {database} are not as this program made them. Take the newest"
          + " Wherefrom, or restore the database from its copy.",
      "42P01",
      "42703",
      "42883",
      "3F000"),
  DAMAGED(
      Outcome.REFUSED,
      "The shared server {host} cannot read or write its own files. Look at its disk and its log"
          + " before you go on.",
      "58",
      "XX001",
      "XX002"),
  AWAY(Outcome.UNHEARD, "No connection to the shared server {host}.", "08", "57", ""),
  OTHER(
      Outcome.REFUSED, "The shared server {host} refused it (SQLSTATE {state}). Its log says why.");

  /** What is known of what was sent. */
  private enum Outcome {
    /** It may be written or not. */
    UNHEARD,
    /** It is not written, but the same may be taken a moment later. */
    NOT_NOW,
    /** It is not written, and will not be until somebody mends what is wrong. */
    REFUSED
  }

  private static final String UNHEARD = " Nothing is shown as done.";

  private final Outcome outcome;
  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<String> states;

  /**
   * @param words with {@code {host}}, {@code {database}} and {@code {state}} in place of these
   * @param states how the SQLSTATEs begin that say so; the first trouble that fits counts
   */
  ServerTrouble(Outcome outcome, String words, String... states) {
    this.outcome = outcome;
    this.words = words;
    this.states = List.of(states);
  }

  /** What the deepest cause that the server, or the way to it, has told says. */
  static ServerTrouble of(SQLException cause) {
    for (Throwable each = cause; each != null; each = each.getCause()) {
      if (each instanceof UnknownHostException) {
        return NO_SUCH_HOST;
      }
    }
    String state = state(cause);
    for (ServerTrouble trouble : values()) {
      if (trouble.states.stream()
          .anyMatch(it -> it.isEmpty() ? state.isEmpty() : begins(state, it))) {
        return trouble;
      }
    }
    return OTHER;
  }

  private static boolean begins(String state, String with) {
    return state.startsWith(with);
  }

  private static String state(SQLException cause) {
    String state = "";
    for (Throwable each = cause; each != null; each = each.getCause()) {
      if (each instanceof SQLException sql && sql.getSQLState() != null) {
        state = sql.getSQLState();
      }
    }
    return state;
  }

  /** Whether what was sent may be written, though nobody said so. */
  boolean isUnheard() {
    return outcome == Outcome.UNHEARD;
  }

  /** Whether the same may be taken a moment later. */
  boolean isPassing() {
    return outcome != Outcome.REFUSED;
  }

  /** What to tell the person. */
  String sentence(ServerAddress address, SQLException cause) {
    return words
        .replace("{host}", address.host())
        .replace("{database}", address.database())
        .replace("{state}", state(cause));
  }

  /** What came of asking for something, where nothing was to be written. */
  static LogbookException asking(ServerAddress address, SQLException cause) {
    ServerTrouble trouble = of(cause);
    String sentence = trouble.sentence(address, cause);
    return trouble.isUnheard()
        ? new UnsentException(sentence + UNHEARD, cause)
        : new LogbookException(sentence, cause);
  }

  /**
   * What came of sending something that was to be written.
   *
   * @param unheard whether it was sent before, too, and nobody heard what became of it
   */
  static LogbookException sending(ServerAddress address, SQLException cause, boolean unheard) {
    ServerTrouble trouble = of(cause);
    String sentence = trouble.sentence(address, cause);
    return unheard || trouble.isUnheard()
        ? new UnsentException(sentence + UNHEARD, cause)
        : new LogbookException(sentence + " Nothing was written.", cause);
  }
}
