using HingeSelector.Knowledge;

namespace HingeSelector.Rules;

/// <summary>A philosophy laid over the rules of the base.</summary>
/// <param name="Philosophy">Its head and weights.</param>
/// <param name="Changes">What it does to rules, in the order of its file.</param>
/// <param name="Rules">The rules that hold under it, by index, in order of id.</param>
/// <param name="SwitchedOff">Rules of the base that it switches off.</param>
/// <param name="FindingOrder">As in the rule book.</param>
/// <param name="RulesOfFinding">As in the rule book.</param>
public sealed record Overlay(
    Philosophy Philosophy,
    IReadOnlyList<RuleChange> Changes,
    IReadOnlyList<Rule> Rules,
    IReadOnlyList<Rule> SwitchedOff,
    IReadOnlyList<int> FindingOrder,
    IReadOnlyList<IReadOnlyList<int>> RulesOfFinding);
