using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;

namespace Stockwright.Storage.Kitchen;

/// <summary>The secret part of the address of the kitchen's calendar feed. Made at the start, so that reading a page writes nothing.</summary>
internal static class CalendarSecret
{
    public static Task<int> GiveCalendarTokenAsync(this StockwrightContext context, int kitchenId, bool renew, CancellationToken cancellationToken)
    {
        string fresh = New();
        return context.Kitchens
            .Where(row => row.Id == kitchenId && (renew || row.CalendarToken == null))
            .ExecuteUpdateAsync(row => row.SetProperty(kitchen => kitchen.CalendarToken, fresh), cancellationToken);
    }

    public static string New() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(20));
}
