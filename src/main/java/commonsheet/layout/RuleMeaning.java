package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Checks what no schema can say of a rule: whether its words mean something to the program. */
final class RuleMeaning {
  private final Terms terms = Resources.terms();
  private final Set<String> concepts = concepts(terms);
  private final QuantityCatalogue quantities = QuantityCatalogue.standard();
  private final FigureParser figures = new FigureParser(NumberStyle.DECIMAL_POINT);

  /** What is wrong, in the order of the file's members. */
  List<RuleProblem> problems(LayoutRule rule, RuleLines file) {
    List<RuleProblem> problems = new ArrayList<>();
    texts(rule.recognise().allOf(), "/recognise/allOf", file, problems);
    texts(rule.recognise().anyOf(), "/recognise/anyOf", file, problems);
    texts(rule.recognise().columns(), "/recognise/columns", file, problems);
    texts(rule.recognise().rows(), "/recognise/rows", file, problems);
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < rule.labels().size(); i++) {
      label(rule.labels().get(i), "/labels/" + i, file, problems);
      repeated(rule.labels().get(i).say(), "/labels/" + i + "/say", seen, file, problems);
    }
    seen.clear();
    for (int i = 0; i < rule.columns().size(); i++) {
      repeated(rule.columns().get(i).say(), "/columns/" + i + "/say", seen, file, problems);
    }
    for (int i = 0; i < rule.phrases().size(); i++) {
      phrase(rule.phrases().get(i), "/phrases/" + i, file, problems);
    }
    for (int i = 0; i < rule.identity().size(); i++) {
      texts(rule.identity().get(i).say(), "/identity/" + i + "/say", file, problems);
    }
    texts(rule.ignore(), "/ignore", file, problems);
    rule.defaults()
        .conditions()
        .forEach(
            (quantity, conditions) ->
                conditions(
                    quantity, conditions, "/defaults/conditions/" + quantity, file, problems));
    return problems;
  }

  private void label(LabelRule label, String place, RuleLines file, List<RuleProblem> problems) {
    texts(label.say(), place + "/say", file, problems);
    conditions(label.quantity(), label.conditions(), place + "/conditions", file, problems);
    if (label.statistic() != null && !allowed(label)) {
      problems.add(
          new RuleProblem(
              file.line(place + "/statistic"),
              label.quantity() + " cannot be called " + label.statistic().label()));
    }
    if (label.unit() != null && !measures(label.unit(), label.quantity())) {
      problems.add(
          new RuleProblem(
              file.line(place + "/unit"),
              "\""
                  + label.unit()
                  + "\" is no unit of "
                  + label.quantity()
                  + "; write it as sheets print it"));
    }
  }

  private boolean allowed(LabelRule label) {
    Terms.StatisticRule rule = terms.statistics(label.quantity());
    String name = label.statistic().label();
    return name.equals(rule.fixed()) || (rule.allowed() != null && rule.allowed().contains(name));
  }

  private boolean measures(String unit, String quantity) {
    List<Figure> found = figures.find("1 " + unit);
    if (found.isEmpty() || found.get(0).unit() == null) {
      return false;
    }
    Dimension dimension = found.get(0).unit().dimension();
    Dimension wanted = quantities.get(quantity).dimension();
    return dimension == wanted || (wanted == Dimension.CURRENT && dimension == Dimension.RATE);
  }

  private void conditions(
      String quantity,
      Conditions conditions,
      String place,
      RuleLines file,
      List<RuleProblem> problems) {
    for (String name : conditions.values().keySet()) {
      if (!terms.mayCarry(quantity, name)) {
        problems.add(
            new RuleProblem(
                file.line(place + "/" + name), quantity + " carries no condition " + name));
      }
    }
  }

  private void phrase(
      Vocabulary.Phrases phrase, String place, RuleLines file, List<RuleProblem> problems) {
    texts(phrase.say(), place + "/say", file, problems);
    for (String concept : phrase.means().trim().split("\\s+")) {
      if (!concepts.contains(concept)) {
        String hint = Nearest.hint(concept, concepts);
        problems.add(
            new RuleProblem(
                file.line(place + "/means"),
                "\""
                    + concept
                    + "\" is no concept of the vocabulary"
                    + (hint.isEmpty() ? "; docs/layouts.md lists the most used" : hint)));
      }
    }
  }

  private static void texts(
      List<String> texts, String place, RuleLines file, List<RuleProblem> problems) {
    for (int i = 0; i < texts.size(); i++) {
      if (Tokens.key(texts.get(i)).isEmpty()) {
        problems.add(
            new RuleProblem(
                file.line(place + "/" + i),
                "\"" + texts.get(i) + "\" has no letter or digit that it could be known by"));
      }
    }
  }

  private static void repeated(
      List<String> texts,
      String place,
      Map<String, Integer> seen,
      RuleLines file,
      List<RuleProblem> problems) {
    for (int i = 0; i < texts.size(); i++) {
      int line = file.line(place + "/" + i);
      Integer first = seen.putIfAbsent(Tokens.key(texts.get(i)), line);
      if (first != null) {
        problems.add(
            new RuleProblem(
                line,
                "\"" + texts.get(i) + "\" was given a meaning on line " + first + " already"));
      }
    }
  }

  private static Set<String> concepts(Terms terms) {
    Set<String> all = new TreeSet<>(terms.blockers());
    terms.terms().forEach(t -> Stream.of(t.all(), t.any(), t.none()).forEach(all::addAll));
    terms.procedures().forEach(p -> Stream.of(p.all(), p.none()).forEach(all::addAll));
    // Concepts know no language; the English words name them all.
    Resources.language("en")
        .phrases()
        .forEach(phrase -> all.addAll(List.of(phrase.means().trim().split("\\s+"))));
    return all;
  }
}
