package outrigger.generator.cli;

import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import outrigger.generator.run.Progress;

/** A bar on the terminal; loaded only where there is one. */
final class TerminalProgress implements Progress {
  private ProgressBar bar;
  private int left;

  @Override
  public synchronized void begin(int parts) {
    left = parts;
    bar = new ProgressBarBuilder().setTaskName("done").setInitialMax(parts).setStyle(ProgressBarStyle.ASCII)
        .setUpdateIntervalMillis(100).setConsumer(new ConsoleProgressBarConsumer(System.err)).clearDisplayOnFinish()
        .build();
    closeAtEnd();
  }

  @Override
  public synchronized void finished(String name) {
    bar.step();
    left--;
    closeAtEnd();
  }

  private void closeAtEnd() {
    if (left == 0) {
      bar.close();
    }
  }
}
