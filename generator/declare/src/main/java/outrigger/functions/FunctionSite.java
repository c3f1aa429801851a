package outrigger.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a lambda or method reference asks for: a value of an interface, whose one method calls another with what was captured
 * and what it is called with (package {@code java.lang.invoke}, class {@code LambdaMetafactory}).
 *
 * @param factory type of the call that makes the value: what is captured, and the interface
 * @param name of the interface's method
 * @param method its type, erased
 * @param used its type as it is used here
 * @param kind of the handle on the method called (chapter 5.4.3.5)
 * @param ofInterface whether an interface declares the method called
 * @param owner class of the method called
 * @param called name of the method called
 * @param calledType its type
 */
record FunctionSite(String factory, String name, String method, String used, int kind, boolean ofInterface, String owner,
    String called, String calledType) {
  static final int VIRTUAL = 5;
  static final int STATIC = 6;
  static final int SPECIAL = 7;
  static final int CONSTRUCTOR = 8;
  static final int INTERFACE = 9;
  private static final String MAKER = "java/lang/invoke/LambdaMetafactory";

  /** Reads the constant of a call made up at run time; nothing where it is another or needs more than is done here. */
  static Optional<FunctionSite> read(ClassFile file, int constant) {
    ConstantPool pool = file.pool();
    List<Integer> maker = file.maker(pool.number(constant, 0));
    int handle = pool.number(maker.get(0), 1);
    if (!pool.owner(handle).equals(MAKER) || !pool.name(handle).equals("metafactory")) {
      return Optional.empty();
    }
    int impl = pool.number(maker.get(2), 1);
    FunctionSite site = new FunctionSite(pool.descriptor(constant), pool.name(constant), pool.text(maker.get(1)),
        pool.text(maker.get(3)), pool.kind(maker.get(2)), pool.tag(impl) == ConstantPool.INTERFACE_METHOD,
        pool.owner(impl), pool.name(impl), pool.descriptor(impl));
    return site.kind < VIRTUAL || site.kind == SPECIAL && !site.owner.equals(file.name()) || !site.converts()
        ? Optional.empty() : Optional.of(site);
  }

  List<String> captured() {
    return Types.taken(factory);
  }

  /** What the method called takes, the value it is called on first. */
  List<String> wanted() {
    List<String> wanted = new ArrayList<>();
    if (kind != STATIC && kind != CONSTRUCTOR) {
      wanted.add(owner.startsWith("[") ? owner : "L" + owner + ";");
    }
    wanted.addAll(Types.taken(calledType));
    return wanted;
  }

  /** What the method called gives. */
  String result() {
    return kind == CONSTRUCTOR ? "L" + owner + ";" : Types.given(calledType);
  }

  /** Whether all that is to be converted is of the usual kinds. */
  private boolean converts() {
    List<String> wanted = wanted();
    List<String> usedTypes = Types.taken(used);
    if (wanted.size() != captured().size() + usedTypes.size()) {
      return false;
    }
    for (int i = 0; i < usedTypes.size(); i++) {
      if (!converts(usedTypes.get(i), wanted.get(captured().size() + i))) {
        return false;
      }
    }
    String given = Types.given(method);
    return given.equals("V") || !result().equals("V") && converts(result(), Types.isPrimitive(given) ? given : Types.OBJECT);
  }

  private static boolean converts(String from, String to) {
    if (!Types.isPrimitive(to)) {
      return true;
    }
    String primitive = Types.isPrimitive(from) ? from : Types.unwrapped(from);
    return !primitive.isEmpty() && Types.widens(primitive, to);
  }
}
