namespace HingeSelector.Tests.Rules.Naive;

/// <summary>What the naive interpreter says of a line or a rule.</summary>
internal enum Answer
{
    No,
    Unsure,
    Yes,
}
