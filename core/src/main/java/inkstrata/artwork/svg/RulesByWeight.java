package inkstrata.artwork.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.w3c.dom.Element;

/** Finds the rules of the style sheets that hold for an element, weakest first. */
final class RulesByWeight {
    private final List<StyleRule> rules;

    RulesByWeight(List<StyleRule> rules) {
        List<StyleRule> sorted = new ArrayList<>(rules);
        sorted.sort(Comparator.<StyleRule>comparingInt(rule -> rule.selector().specificity())
                .thenComparingInt(StyleRule::order));
        this.rules = List.copyOf(sorted);
    }

    List<Declaration> declarationsFor(Element element) {
        List<Declaration> declarations = new ArrayList<>();
        for (StyleRule rule : rules) {
            if (rule.selector().matches(element)) {
                declarations.addAll(rule.declarations());
            }
        }
        return declarations;
    }
}
