package outrigger.functions;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.List;

/** Writes the instructions of a method without branches (chapter 6.5). */
final class Code {
  private static final int LOAD = 0x15;
  private static final int RETURN = 0xac;
  private static final int RETURN_NOTHING = 0xb1;
  private static final int GET_STATIC = 0xb2;
  static final int PUT_STATIC = 0xb3;
  static final int GET_FIELD = 0xb4;
  static final int PUT_FIELD = 0xb5;
  private static final int VIRTUAL = 0xb6;
  private static final int SPECIAL = 0xb7;
  private static final int STATIC = 0xb8;
  private static final int INTERFACE = 0xb9;
  private static final int NEW = 0xbb;
  private static final int CAST = 0xc0;
  private static final int DUPLICATE = 0x59;
  private static final int DROP = 0x57;
  private static final int DROP_TWO = 0x58;
  /** From int, long and float to what stands behind them among int, long, float, double. */
  private static final int[][] WIDEN = {{0, 0x85, 0x86, 0x87}, {0, 0, 0x89, 0x8a}, {0, 0, 0, 0x8d}};

  private final ConstantPool pool;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  Code(ConstantPool pool) {
    this.pool = pool;
  }

  byte[] bytes() {
    return bytes.toByteArray();
  }

  Code load(String type, int slot) throws IOException {
    out.writeByte(LOAD + Types.family(type));
    out.writeByte(slot);
    return this;
  }

  Code field(int code, String owner, String name, String type) throws IOException {
    out.writeByte(code);
    out.writeShort(pool.field(owner, name, type));
    return this;
  }

  Code instance(String owner, String name, String type) throws IOException {
    return field(GET_STATIC, owner, name, type);
  }

  Code fresh(String owner) throws IOException {
    out.writeByte(NEW);
    out.writeShort(pool.type(owner));
    out.writeByte(DUPLICATE);
    return this;
  }

  Code construct(String owner, String type) throws IOException {
    return call(SPECIAL, false, owner, "<init>", type);
  }

  private Code call(int code, boolean ofInterface, String owner, String name, String type) throws IOException {
    out.writeByte(code);
    out.writeShort(pool.method(ofInterface, owner, name, type));
    if (code == INTERFACE) {
      out.writeByte(1 + Types.taken(type).stream().mapToInt(Types::slots).sum());
      out.writeByte(0);
    }
    return this;
  }

  /** Calls what a site calls. */
  Code call(FunctionSite site) throws IOException {
    if (site.kind() == FunctionSite.CONSTRUCTOR) {
      return construct(site.owner(), site.calledType());
    }
    int code = site.kind() == FunctionSite.STATIC ? STATIC : site.ofInterface() ? INTERFACE : VIRTUAL;
    return call(code, site.ofInterface(), site.owner(), site.called(), site.calledType());
  }

  /** Turns the value on top from one type, used as another, to a third. */
  Code convert(String from, String used, String to) throws IOException {
    if (Types.isPrimitive(from)) {
      return Types.isPrimitive(to) ? widen(from, to) : box(from);
    }
    if (!used.equals(from) && !used.equals(Types.OBJECT)) {
      out.writeByte(CAST);
      out.writeShort(pool.type(Types.className(used)));
    }
    return Types.isPrimitive(to) ? unbox(Types.unwrapped(used), to) : this;
  }

  private Code box(String primitive) throws IOException {
    String owner = Types.wrapper(primitive);
    return call(STATIC, false, owner, "valueOf", "(" + primitive + ")L" + owner + ";");
  }

  private Code unbox(String primitive, String to) throws IOException {
    return call(VIRTUAL, false, Types.wrapper(primitive), Types.unwrapping(primitive), "()" + primitive)
        .widen(primitive, to);
  }

  private Code widen(String from, String to) throws IOException {
    if (Types.family(from) != Types.family(to)) {
      out.writeByte(WIDEN[Types.family(from)][Types.family(to)]);
    }
    return this;
  }

  Code drop(String type) throws IOException {
    if (!type.equals("V")) {
      out.writeByte(Types.slots(type) == 2 ? DROP_TWO : DROP);
    }
    return this;
  }

  Code give(String type) throws IOException {
    out.writeByte(type.equals("V") ? RETURN_NOTHING : RETURN + Types.family(type));
    return this;
  }

  /** Loads values of these types, standing in slots one behind the other. */
  Code loadAll(List<String> types, int first) throws IOException {
    int slot = first;
    for (String type : types) {
      load(type, slot);
      slot += Types.slots(type);
    }
    return this;
  }
}
