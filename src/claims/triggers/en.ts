import type { TriggerRow } from './types';

/** English triggers; phrases of one row are divided by "|". Common practice, no source, in the classes of the two papers. */
export const english: readonly TriggerRow[] = [
  [
    "not see another|never see another|won't see another|not find another|won't find another|never find another|will find another|ever find another|see another one|find another one|find another like|such another|not only|not just|not merely|no doubt|without doubt|without a doubt|no question|nothing wrong|no problem|no problems|no issue|no issues|no reason|no idea why|no trouble|no longer available|not a problem|no reserve|no returns|no refunds|no offers|no time wasters|no fault|no faults|cannot fault|can not fault|not bad|not forgetting|not plastic|not the plastic|not like the plastic|not like plastic|not like the modern|not like modern|not like the new|not like today's|if you can|if you like|if you want|if you wish|if you prefer|if possible|if need be|if needed|struggle to find another|not replaced|not changed|not touched|not altered|not renewed|not restored|don't be|don't look|don't worry|don't let|no to both|no to all|no to everything|not much to|not a lot to|not to mention|no stranger|not mine to|i think from|i guess from|i believe from|believe it or not|another of these|another one of these|another like it|another like this|another one like it|another one like this|another in this|for sale|for collection|for you|for me|for years|for many years|for the age|for its age|for spares|not tried|have not tried|haven't tried|not tested|have not tested|haven't tested|never tried|never used|not used|have not used|haven't used|not touched|not had|not seen|no better|none better|no finer|nothing better|nothing finer|no lighter|none lighter|not a scratch|not a mark|if you take|if you remove|if you slide|if you lift|if you press|if you pull|if you turn|if you push|if you flip|if you switch|if you unclip|if you unscrew|if you drop|the former owner|the former owners|the former user|is it takes|is it has|is it does|is it uses|is it comes|is it sews|are the ordinary|are the usual|are the standard|is the ordinary|is the usual|is the standard|take the usual|take the ordinary|take the standard|built like a tank|like a tank|like a dream|like a train|like a charm|like clockwork|takes the usual|uses the usual|takes the standard|uses the standard|takes the ordinary|uses the ordinary|has the usual|takes the common|without difficulty|without any difficulty|without problem|without problems|without a problem|without any problem|without any problems|without trouble|without any trouble|without effort|with no effort|with no problem|with no problems|with no trouble|no need|no change|no changes|no wonder|without exception",
    { effect: 'none', side: 'both', reach: 0 },
  ],
  [
    "is not a|is not an|is not the|is not|isn't|isn't a|isn't the|are not|aren't|was not|wasn't|it's not|its not|not a|not an|not the|not|never a|never|nor|neither|cannot|can't|can not|won't|doesn't have|does not have|doesn't do|does not do|don't|doesn't|does not|did not|didn't|hasn't|has not|haven't|nothing like|far from|rather than|instead of|in place of|in lieu of|other than|anything but|as opposed to|lacks|lacking|hardly|hardly a|hardly an|bar the|barring|barring the|save for|save for the|short of|devoid of|bereft of|barely|scarcely|by no means|by no means a|nothing|minus|not supplied with|does not come with|doesn't come with|not fitted with|comes without|come without|sold without|not the model with|not the version with|not the one with|not the type with|not one with|did not come with|didn't come with|never came with|won't come with|will not come with|has not got|hasn't got|have not got|haven't got",
    { effect: 'denies', side: 'before', reach: 6 },
  ],
  [
    'no|without|w/o|sans|non|missing|missing its|missing the|zero|let alone|much less|still less|never mind',
    { effect: 'denies', side: 'before', reach: 4 },
  ],
  ['with an adaptor|with an adapter', { effect: 'guesses', side: 'after', reach: 4 }],
  [
    "they jam|they jammed|they rattle|they rattled|they don't fit|they do not fit|they won't fit|they don't work",
    { effect: 'guesses', side: 'after', reach: 99, across: true },
  ],
  ['free of|free from', { effect: 'denies', side: 'before', reach: 2 }],
  ['i tried a|i tried the|tried a', { effect: 'other', side: 'before', reach: 3 }],
  [
    "won't fit|will not fit|doesn't fit|does not fit|do not fit|don't fit|won't work|does not work on|not included|is not included|are not included|not present|is missing|are missing|missing|is gone|not supplied|excluded|not part of the sale|not fitted|not available|is absent|are absent|was ruled out|is ruled out",
    { effect: 'denies', side: 'after', reach: 6 },
  ],
  [
    "is no good|are no good|is no use|are no use|is wrong for|are wrong for|is the wrong one|are the wrong ones|is useless|are useless|won't go in|don't go in|doesn't go in|won't seat|will jam|will jam it|jams in it|rattles in it|rattle in it|rattles about|rattle about|rattles around|rattle around|falls out|fall out",
    { effect: 'denies', side: 'after', reach: 3 },
  ],
  [
    'the look of|the looks of|the feel of|the air of|like something|like a|like an|like the|like my|similar to|similar to a|resembles|reminiscent of|looks like|looks like a|looks like an|looks like the|look like|in the style of|in the manner of|along the lines of|much like|as with the|as on the|same as|same as the|the same as|same bobbin as|same bobbin as the|same needles as|identical to|equivalent of|equivalent to|as good as|as good as a|as good as an|as strong as|sister of|sister to|brother of|brother of the|brother to|brother to the|sister of the|cousin of|clone of|copy of|copy of the|based on|based on the|inspired by|comparable to|comparable with|think of|built like|rivals|better than|lighter than|heavier than|smaller than|bigger than|larger than|older than|newer than|stronger than|nicer than|quieter than|compared to|compared with|than a|than an|than the|than my|than any|than the others|than others|than most|unlike others|unlike the others|as heavy as|as light as|unlike|unlike the|not to be confused with|often taken for|sometimes taken for|often taken for the|taken for the|often confused with|often mistaken for|mistaken for|confused with|shares|as any|as if|as though|as if it were|as though it were',
    { effect: 'likens', side: 'before', reach: 8 },
  ],
  [
    'inside|underneath|in disguise|in all but name|by another name',
    { effect: 'likens', side: 'after', reach: 0, namesOnly: true },
  ],
  [
    'takes the same|uses the same|pretty much a|pretty much an|pretty much the|more or less a|more or less an|more or less the|basically a|basically an|basically the|essentially a|essentially an|essentially the|practically a|practically the|effectively a|effectively the',
    { effect: 'likens', side: 'before', reach: 8, namesOnly: true },
  ],
  [
    'is the same underneath|is the same inside|is the same machine|is the same thing|is the same but|is much the same|is identical|is its twin|is the twin',
    { effect: 'likens', side: 'after', reach: 1, namesOnly: true },
  ],
  [
    'charm|character|workmanship|craftsmanship|style|styled|lookalike|look-alike|look alike|clone|copy|replica|esque|inspired|type of thing',
    { effect: 'likens', side: 'after', reach: 2 },
  ],
  [
    "hope it's|hope it is|hoped it was|hoping it's|hoping it is|hopes it's|wish it was|wish it were|may be|maybe|might be|might|could be|possibly|perhaps|probably|presumably|apparently|i think|i believe|i guess|i suspect|we think|we believe|i assume|not sure if|not sure whether|not sure but|unsure|unsure if|not certain|seems to be|appears to be|supposedly|allegedly|i was told|i am told|i'm told|was told|we were told|told it|told it is|told it was|believed to be|thought to be|said to be|sold to me as|likely|most likely|as far as i know|afaik|as far as i can tell|looks to be|if i am right|if i'm not mistaken|guessing|from what i can find|google says|according to|have no idea if|no idea if|don't know if|do not know if|don't know whether|could this be|is it|is this|the former|the first one|the first two|the last two|the latter two|either|may not|might not|probably not|possibly not|perhaps not|won't be able to|will not be able to|wouldn't be able to|would not be able to|not be able to|unable to|it's not that it|it is not that it|it isn't that it|not that it|was going to|were going to|was about to|was tempted to",
    { effect: 'guesses', side: 'before', reach: 99 },
  ],
  [
    "i think|i believe|apparently|i was told|i am told|i'm told|perhaps|possibly|maybe|probably|not sure|i guess|i'd guess|i would guess|at a guess|i doubt it|i doubt that",
    { effect: 'guesses', side: 'after', reach: 8 },
  ],
  [
    "used to call it|used to say it|used to say that it|always said it|always said that it|liked to say it|used to tell us it|someone online said|somebody online said|someone said|somebody said|somebody on the internet said|said it must be|said it had to be|said it could be|said it might be|says it must be|says it could be|says it might be|reckoned it must be|reckons it must be|thought it must be|told it must be|told me it must be|told it could be|told it might be|to call it|call it a|call it an|someone suggested|somebody suggested|suggested a|suggested an|suggested it was|suggested the|thinking it was|thinking it is|thought it was|those who say|anyone who says|whoever says|it was called|were called|it was known as|somebody thought|someone thought|people thought|often called|sometimes called|often described as|often advertised as|often sold as|advertised as|described as|so-called|so called|people say|some say|sellers call|sellers say|you will see|you'll see|you will read|you'll read|you may read|you might read|you often read|you will hear|you'll hear|you may hear|some will tell you|they will tell you|some books say|wrongly called|wrongly described as|wrongly listed as|listed as|known to some as|people call|others call|everyone calls|called by some|swore|swears that|reckoned that|reckons that|insisted that|assured me|promised me|told me it was|told me that it was|told me it is|told me it's|said it was|said that it was|said it is|said it's|says it is|says it was|claimed it was|claims it is|swore it was|reckons it is|reckons it's|says it's|swears it's|claims it's|reckons it was|reckoned it was|insisted it was|was told it is|people call it|calls it|called it|advertised it as|sold it as|listed it as|described it as|said its|said this was|says its|reckons its",
    { effect: 'quotes', side: 'before', reach: 99 },
  ],
  [
    "my listings|my other listings|see also my|our shop|my shop|our store|must have been for|must have belonged to|specialised in|specialized in|specialising in|specializing in|specialises in|specialises|specialist in|specialists in|dealers in|everyone has|everybody has|they all have|also have|also going|also to go|also clearing|also selling|also for sale|also listed|also available|i also have|i also sell|we also have|see my other|my other|my others|other items|other listings|another|another machine|another one|for some other machine|for some other|for another machine|some other machine|a friend's|a friend has|my neighbour's|my sister's|my sister has|my new|superseded by|replaced by|replaced it with|replacing it with|upgraded to|upgrading to|bought a new|bought myself|swap for|swap for a|exchange for|exchange for a|part exchange|trade for|trade for a|in exchange for|looking for|in search of|wanted|comes from another|taken from|taken off|from another|donor|she also had|he also had|she used to have|i used to have|i had a|we used to|the others were|my old one|my last one|my previous|next to|whereas|most|most of them|most of these|most of those|many|usually|normally|generally|typically|others|later ones|earlier ones|later models|earlier models|some of them|other models|other makes|other machines|unlike most|the rest|the one i keep|the one i am keeping|the one i'm keeping|the one i use|the one we keep|that one has|that had|that one is|that one takes|the other has|the other one|the other machine|the version|the light version|other version|the next model|my modern|my newer|my everyday|my main machine|beside it|in the background|on the left|on the right|the wrong|wrong feet|wrong bobbins|wrong foot|my old machine was|my old machine had|my last machine|we also stock|also in stock|we also sell|we sell|these take|these have|they all|all of them|somebody is selling|someone is selling|the other seller|another seller|other sellers|comes from a|comes from an|comes off a|came off a|on my own machine|wants a|wants the|would like|wish for|also in the box|also in the tin|also in the drawer|also yours|thrown in|staying|in background|machine in the photo|machine in the picture|though in the picture|also pictured|also in the picture|keeping for myself",
    { effect: 'other', side: 'before', reach: 99, across: true },
  ],
  [
    'fits|fit|to fit|suits|to suit|suitable for|compatible with|for|for a|for an|for the|made for|works with|will fit|will also fit|should fit|from a|from an|off a|off an|manual for|case for|parts for|borrowed from|intended for|designed for|also for',
    { effect: 'other', side: 'before', reach: 6, namesOnly: true },
  ],
  [
    'it takes|it uses|it sews|it weighs|it can|it comes|it makes|this takes|this one takes|this sews|this weighs|this one has|this has|this one is|and is|and has|and it|and comes|and the|and weighs|and does|and sews|with|which|that is|it is|it has|it does|it was|has a|has the|so it|so is|so your|so the|so they|so old|so modern|so ordinary|so all|so other|only|just a|just|and takes|and holds|and carries|and runs|and makes|and uses|and will|and can|and needs|and still|aside from|apart from|because|since|nevertheless|yet',
    { effect: 'stop', side: 'both', reach: 0 },
  ],
  [
    'no|none|not|n/a|nil|0/10|0 out of 10|nope|nay|never|without|collection only|pickup only|pick up only',
    { effect: 'denies', side: 'row', reach: 0 },
  ],
  ['unknown|not sure|unsure|possibly|probably|maybe|i think|not known', { effect: 'guesses', side: 'row', reach: 0 }],
  [
    'appeared only|came only|was only on|were only on|only arrived|arrived with|arrived later|only appeared|appeared later|only came|came in with|was introduced|were introduced|came later|came afterwards|came after it|was her|was his|is another|are different',
    { effect: 'other', side: 'after', reach: 3 },
  ],
  [
    "as solid as|as tough as|as handy as|as sturdy as|as quiet as|as robust as|as strong as|as good as|as useful as|as nice as|as smooth as|as powerful as|as reliable as|nearly as|almost as|almost a|almost an|nearly a|nearly an|not quite a|not quite an|a poor man's|the poor man's",
    { effect: 'likens', side: 'before', reach: 6 },
  ],
  [
    'had it down as|has it down as|had this down as|has this down as|have it down as|told me|tells me|tell me|tell me that|label saying|sign saying|a note saying|some would call it|would call it|might call it|catalogued as|catalogued it as|the auctioneer|somebody wrote|someone wrote|oh sure|yeah right|yeah sure|oh yes sure|listed this as|listed it as|was listed as|had listed it as|advertised this as|often advertised with|often sold with|usually advertised with|often listed with|the internet says|internet says|online it says|websites say|a website says|forums say|adverts say|adverts call',
    { effect: 'quotes', side: 'before', reach: 99, across: true },
  ],
  [
    "this hasn't|this has not|it has not|it has none|she has not|it hasn't got|this won't|this will not|it won't|it will not|it is not|it isn't|it's not|it ain't|this isn't|this is not|they are not|it does not|it doesn't|it cannot|it can't|it hasn't",
    { effect: 'denies', side: 'after', reach: 4, ends: true },
  ],
  [
    "and stays|stays with me|stays with us|stays here|is staying|is not for sale|isn't for sale|belong to my other|belongs to my other|go with my other|goes with my other|are for my other|is for my other|fit my other|fits my other|this one doesn't|this one does not|this one hasn't|this one has not|this one isn't|this one is not|this one won't|mine doesn't|this doesn't|not for sale|aren't for sale|it isn't for sale|i keep|i am keeping|we keep",
    { effect: 'other', side: 'after', reach: 99, across: true },
  ],
  [
    'according to|acc to|acc. to|heaven knows|god knows|goodness knows|lord knows',
    { effect: 'guesses', side: 'both', reach: 99, across: true },
  ],
  ['they said|they also said|he also said|she also said', { effect: 'quotes', side: 'before', reach: 8 }],
  // "No cams with it": none are enclosed.
  ['with it|with this one|to go with it', { effect: 'other', side: 'after', reach: 0 }],
  ['feels like|felt like|it feels|feels', { effect: 'guesses', side: 'both', reach: 6 }],
  [
    'everything but|everything except|anything except|anything but|all except|all but',
    { effect: 'denies', side: 'before', reach: 3 },
  ],
  ['is too|are too|was too|were too', { effect: 'guesses', side: 'after', reach: 1 }],
  ['no|nope|negative', { effect: 'denies', side: 'after', reach: 0, ends: true }],
  ['built to|made to|engineered to', { effect: 'likens', side: 'before', reach: 2 }],
  [
    "i'm the queen|i am the queen|i'm the king|i am the king|pigs fly|pigs might fly|and pigs|my foot|my eye|dream on",
    { effect: 'quotes', side: 'after', reach: 99, across: true },
  ],
  [
    'were it|were this|if|whether|unless|should it be|should this be|should it have|in case it is|in case it has|say does it|ask does it|asks does it|asked does it|say will it|ask will it|asked will it|say can it|ask can it|asked can it|folk ask|people ask|what people ask|everyone asks|everybody asks',
    { effect: 'guesses', side: 'before', reach: 99, across: true },
  ],
  [
    "do not fit|does not fit|don't fit|doesn't fit|won't fit|will not fit|not for|is not for|are not for|no good for|no use for|useless for|wrong for|the wrong ones for|not suitable for|will not go into|won't go into|will not go in",
    { effect: 'denies', side: 'before', reach: 14, namesOnly: true, across: true },
  ],
  [
    'no other|none of the others|none of the other|the usual|the standard one|the ordinary|the common|had one|had one of these|has one too',
    { effect: 'other', side: 'before', reach: 99 },
  ],
  ['nothing to do with|no connection with|no relation to', { effect: 'other', side: 'before', reach: 8 }],
  ['forget|forget about', { effect: 'denies', side: 'before', reach: 5 }],
  ['not necessarily|possible|questionable|suspected', { effect: 'guesses', side: 'before', reach: 4 }],
  ['maybe more|perhaps more|or more|if not more', { effect: 'guesses', side: 'after', reach: 99, across: true }],
  ['or newer|or later|or older|or earlier|or before|or after', { effect: 'guesses', side: 'after', reach: 0 }],
  ['unlikely|doubtful', { effect: 'guesses', side: 'after', reach: 4 }],
];
