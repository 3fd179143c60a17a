using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Values that a measurement may bring, with the answers that each means.</summary>
/// <param name="Values">In ascending order; each counts as much as the next, unless it is repeated.</param>
/// <param name="Answers">What is on file once a value is measured.</param>
/// <param name="Spread">Where the values come from; null when they are only examples over the usual range.</param>
internal sealed record PlausibleValues(IReadOnlyList<double> Values, Func<double, IReadOnlyList<(AnswerKey, FactValue)>> Answers, string? Spread);
