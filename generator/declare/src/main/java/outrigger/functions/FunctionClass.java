package outrigger.functions;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the class of a function value: keeps what is captured in fields, has a method {@value #MAKER} that makes a value, or
 * gives the one there is where nothing is captured, and the interface's method.
 */
final class FunctionClass {
  static final String MAKER = "of";
  private static final int MAGIC = 0xcafebabe;
  private static final int FINAL = 0x10;
  private static final int STATIC = 0x8;
  private static final int PUBLIC = 0x1;
  private static final int PRIVATE = 0x2;
  private static final int SUPER = 0x20;
  private static final int SYNTHETIC = 0x1000;
  private static final String ONE = "ONE";
  private static final String OBJECT = "java/lang/Object";

  private final String name;
  private final FunctionSite site;
  private final ConstantPool pool = new ConstantPool();
  private final List<byte[]> fields = new ArrayList<>();
  private final List<byte[]> methods = new ArrayList<>();

  private FunctionClass(String name, FunctionSite site) {
    this.name = name;
    this.site = site;
  }

  /**
   * The bytes of a class.
   *
   * @param version of the class file, as the one's that it serves
   * @param nest name of the class whose nest it joins
   */
  static byte[] bytes(String name, FunctionSite site, int version, String nest) {
    try {
      return new FunctionClass(name, site).write(version, nest);
    } catch (IOException e) {
      throw new IllegalStateException("memory can be written", e);
    }
  }

  private byte[] write(int version, String nest) throws IOException {
    addConstructor();
    addMaker();
    addMethod();
    ByteArrayOutputStream rest = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(rest);
    out.writeShort(FINAL | SUPER | SYNTHETIC);
    out.writeShort(pool.type(name));
    out.writeShort(pool.type(OBJECT));
    out.writeShort(1);
    out.writeShort(pool.type(Types.className(Types.given(site.factory()))));
    writeAll(out, fields);
    writeAll(out, methods);
    out.writeShort(1);
    out.writeShort(pool.utf8("NestHost"));
    out.writeInt(2);
    out.writeShort(pool.type(nest));
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    DataOutputStream to = new DataOutputStream(whole);
    to.writeInt(MAGIC);
    to.writeInt(version);
    pool.writeTo(to);
    rest.writeTo(to);
    return whole.toByteArray();
  }

  private static void writeAll(DataOutputStream out, List<byte[]> members) throws IOException {
    out.writeShort(members.size());
    for (byte[] member : members) {
      out.write(member);
    }
  }

  private String type() {
    return "L" + name + ";";
  }

  private String constructorType() {
    return site.factory().substring(0, site.factory().indexOf(')') + 1) + "V";
  }

  private void addConstructor() throws IOException {
    Code code = new Code(pool).load(type(), 0).construct(OBJECT, "()V");
    int slot = 1;
    for (int i = 0; i < site.captured().size(); i++) {
      String type = site.captured().get(i);
      addField(PRIVATE | FINAL, "c" + i, type);
      code.load(type(), 0).load(type, slot).field(Code.PUT_FIELD, name, "c" + i, type);
      slot += Types.slots(type);
    }
    addMethod(PRIVATE, "<init>", constructorType(), code.give("V"));
  }

  private void addMaker() throws IOException {
    Code code = new Code(pool);
    if (site.captured().isEmpty()) {
      addField(PRIVATE | STATIC | FINAL, ONE, type());
      addMethod(STATIC, "<clinit>", "()V", new Code(pool).fresh(name).construct(name, "()V")
          .field(Code.PUT_STATIC, name, ONE, type()).give("V"));
      code.instance(name, ONE, type());
    } else {
      code.fresh(name).loadAll(site.captured(), 0).construct(name, constructorType());
    }
    addMethod(STATIC, MAKER, site.factory(), code.give(type()));
  }

  private void addMethod() throws IOException {
    Code code = new Code(pool);
    if (site.kind() == FunctionSite.CONSTRUCTOR) {
      code.fresh(site.owner());
    }
    for (int i = 0; i < site.captured().size(); i++) {
      code.load(type(), 0).field(Code.GET_FIELD, name, "c" + i, site.captured().get(i));
    }
    List<String> taken = Types.taken(site.method());
    List<String> used = Types.taken(site.used());
    int slot = 1;
    for (int i = 0; i < taken.size(); i++) {
      code.load(taken.get(i), slot).convert(taken.get(i), used.get(i), site.wanted().get(site.captured().size() + i));
      slot += Types.slots(taken.get(i));
    }
    code.call(site);
    String given = Types.given(site.method());
    if (given.equals("V")) {
      code.drop(site.result());
    } else {
      String used1 = Types.isPrimitive(given) || Types.isPrimitive(site.result()) ? site.result() : given;
      code.convert(site.result(), used1, given);
    }
    addMethod(PUBLIC, site.name(), site.method(), code.give(given));
  }

  private void addField(int access, String field, String type) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeShort(access);
    out.writeShort(pool.utf8(field));
    out.writeShort(pool.utf8(type));
    out.writeShort(0);
    fields.add(bytes.toByteArray());
  }

  private void addMethod(int access, String method, String type, Code code) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeShort(access);
    out.writeShort(pool.utf8(method));
    out.writeShort(pool.utf8(type));
    out.writeShort(1);
    out.writeShort(pool.utf8("Code"));
    byte[] instructions = code.bytes();
    out.writeInt(12 + instructions.length);
    out.writeShort(room());
    out.writeShort(room());
    out.writeInt(instructions.length);
    out.write(instructions);
    out.writeShort(0);
    out.writeShort(0);
    methods.add(bytes.toByteArray());
  }

  /** Slots for all that any of the methods holds at once: a new object twice, all values, one of them boxed or widened. */
  private int room() {
    int slots = 4;
    for (String type : site.wanted()) {
      slots += Types.slots(type);
    }
    for (String type : Types.taken(site.method())) {
      slots += Types.slots(type);
    }
    return slots + 2 + site.captured().size() * 2;
  }
}
