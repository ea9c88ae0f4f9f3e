package wherefrom.ui.bench;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Window;

/**
 * Runs the main class that is named first, and prints the milliseconds from the start of the
 * process to the second pulse after its window has come up: the first frame is then on the glass.
 * There the process ends, so that its processor time can be read from outside.
 */
public final class StartProbe {
  private static final int PULSES = Integer.getInteger("pulses", 2);

  private StartProbe() {}

  public static void main(String[] arguments) throws ReflectiveOperationException {
    Thread watch = new Thread(StartProbe::watch, "watch");
    watch.setDaemon(true);
    watch.start();
    Class.forName(arguments[0])
        .getMethod("main", String[].class)
        .invoke(null, (Object) new String[0]);
  }

  private static void watch() {
    while (true) {
      try {
        Platform.runLater(StartProbe::look);
        return;
      } catch (IllegalStateException notYet) {
        Thread.onSpinWait();
        sleep();
      }
    }
  }

  private static void sleep() {
    try {
      Thread.sleep(1);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void look() {
    if (Window.getWindows().stream().anyMatch(Window::isShowing)) {
      new Count().start();
    } else {
      Platform.runLater(StartProbe::look);
    }
  }

  private static final class Count extends AnimationTimer {
    private int pulses;

    @Override
    public void handle(long now) {
      pulses++;
      if (pulses >= PULSES) {
        Instant since = ProcessHandle.current().info().startInstant().orElseThrow();
        System.out.println("up " + since.until(Instant.now(), ChronoUnit.MILLIS));
        Runtime.getRuntime().halt(0);
      }
    }
  }
}
