namespace HingeSelector.Explaining;

/// <summary>Values of a normal spread that divide people into equal parts.</summary>
internal static class Quantiles
{
    /// <summary>Middle of each of so many equal parts of people, ascending.</summary>
    public static IEnumerable<double> Of(double mean, double deviation, int parts)
        => Enumerable.Range(0, parts).Select(i => mean + (deviation * Standard((i + 0.5) / parts)));

    /// <summary>The value below which a share of a standard normal spread lies.</summary>
    /// <remarks>Acklam's rational approximation (2003), good to 1.2e-9 of the value; the shares here keep away from 0 and 1.</remarks>
    public static double Standard(double share)
    {
        if (share > 0.5)
            return -Standard(1 - share);
        if (share < 0.02425)
        {
            var q = Math.Sqrt(-2 * Math.Log(share));
            return (((((((((-7.784894002430293e-03 * q) - 3.223964580411365e-01) * q) - 2.400758277161838) * q) - 2.549732539343734) * q) + 4.374664141464968) * q + 2.938163982698783)
                / ((((((((7.784695709041462e-03 * q) + 3.224671290700398e-01) * q) + 2.445134137142996) * q) + 3.754408661907416) * q) + 1);
        }
        var p = share - 0.5;
        var r = p * p;
        return (((((((((((-3.969683028665376e+01 * r) + 2.209460984245205e+02) * r) - 2.759285104469687e+02) * r) + 1.383577518672690e+02) * r) - 3.066479806614716e+01) * r) + 2.506628277459239) * p)
            / ((((((((((-5.447609879822406e+01 * r) + 1.615858368580409e+02) * r) - 1.556989798598866e+02) * r) + 6.680131188771972e+01) * r) - 1.328068155288572e+01) * r) + 1);
    }
}
