package outrigger.generator.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import outrigger.generator.accessory.Part;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.plan.Names;
import outrigger.generator.plan.Request;

/** Checks that every part of a batch gets a file of its own, on systems that ignore case too. */
final class FileNames {
  private final Map<String, Origin> taken = new HashMap<>();
  private final Set<String> told = new HashSet<>();
  private final List<Fault> faults = new ArrayList<>();

  private FileNames() {}

  static List<Fault> faults(List<Request<?>> requests, List<Draft> drafts) {
    FileNames names = new FileNames();
    for (Request<?> request : requests) {
      names.take(request.name(), request.where());
    }
    for (Draft draft : drafts) {
      for (Part part : draft.parts()) {
        if (!part.suffix().isEmpty()) {
          names.take(draft.name(part), draft.request().where());
        }
      }
    }
    return names.faults;
  }

  private void take(String name, Origin where) {
    Names.fault(name, where).ifPresent(faults::add);
    Origin first = taken.putIfAbsent(name.toLowerCase(Locale.ROOT), where);
    if (first != null && told.add(name.toLowerCase(Locale.ROOT))) {
      String both = first.equals(where) ? where.words() : where.words() + "; the first at " + first.words();
      faults.add(new Fault(name, "name", "two parts have this name (" + both + ")", name, "",
          first.equals(where) ? "Give each value of a list once." : "Name one of them differently.", where));
    }
  }
}
