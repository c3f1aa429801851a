package outrigger.generator.accessory.body;

/** Whether a body mount stands on its own foot while it is printed; holes and marks are left out. */
record Balance(double foot, double weight) {

  /**
   * Foot and middle of the weight, both as y.
   *
   * <p>The gusset's section is a trapezium, or a triangle where its slope meets the web's face above the bed.
   */
  static Balance of(BodyMountLayout l) {
    double far = l.outerFace();
    double foot = l.gusset().foot();
    double near = Math.max(0, foot);
    double high = foot >= 0 ? l.flangeHeight() : l.flangeHeight() * far / (far - foot);
    double gusset = l.width() * high * (near + far) / 2;
    double gussetMoment = l.width() * high * (near * near + near * far + far * far) / 6;
    double thickness = l.p().flangeThickness();
    double wings = (l.flangeTo() - l.flangeFrom() - l.width()) * l.flangeHeight() * thickness;
    double post = l.width() * l.post() * (l.top() - l.flangeHeight());
    double moment = gussetMoment + wings * thickness / 2 + post * l.p().reach();
    return new Balance(Math.max(thickness, foot), moment / (gusset + wings + post));
  }

  /** Whether the weight lies over the foot. */
  boolean stands() {
    return weight <= foot;
  }
}
