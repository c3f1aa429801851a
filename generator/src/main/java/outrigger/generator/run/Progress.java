package outrigger.generator.run;

/** Told how far the work is, from any thread. */
public interface Progress {
  /** Told nothing. */
  Progress NONE = new Progress() {
    @Override
    public void begin(int parts) {}

    @Override
    public void finished(String name) {}
  };

  /** Work on so many parts begins. */
  void begin(int parts);

  /** One part is made and proven. */
  void finished(String name);
}
