# The sheet for the first days at home: the same for every repair, so the strictest of all.
# No shoulder movement, nothing held, sling always, the elbow only helped by the other hand.
#
# $side            left or right
# $operation_date  the day of surgery, as text
# $visit_from, $visit_until   dates between which the wound is looked at, as text
# $dry_until       the first day on which the wound may get wet, as text
# $day_number, $night_number  whom to call
# All other numbers come from the table of evidence.

first-days-side = { $side ->
    [left] IZQUIERDO
    [right] DERECHO
   *[other] (lado no conocido)
}

first-days-title = Sus primeros días en casa
first-days-arm = Brazo { first-days-side }
first-days-surgery = Le operaron del hombro { first-days-side } el { $operation_date }.
first-days-until = Esta hoja es para los primeros días. Úsela hasta que su cirujano le dé su propio plan firmado. Después, use el plan.
first-days-stricter = ¿Le dijeron otra cosa? Haga lo más prudente. Luego llame y pregunte.

first-days-call-title = A quién llamar
first-days-phone-day = De día
first-days-phone-night = De noche
first-days-call-day = De día: { $day_number }
first-days-call-night = De noche: { $night_number }
first-days-call-danger = En peligro, no nos espere. Llame al número de emergencias.

first-days-rules-title = Las reglas por ahora
first-days-rules-sling = Lleve el cabestrillo día y noche.
first-days-rules-shoulder = No mueva el hombro. No levante el brazo ni lo estire para alcanzar cosas. No lo lleve detrás de la espalda.
first-days-rules-hold = No sostenga ni lleve cosas con esa mano.
first-days-rules-lean = No se apoye en ese brazo. No se empuje con él para levantarse de la silla o de la cama.
first-days-rules-pain = No tener dolor no quiere decir que ya esté sano. Las reglas siguen igual.
first-days-rules-drive = No conduzca.

first-days-sling-title = Su cabestrillo
first-days-sling-fit = El codo va hasta el fondo del cabestrillo, doblado como la esquina de un libro. La muñeca también descansa en él. La correa no debe clavarse en el cuello.
first-days-sling-hand = Mantenga la mano delante del vientre. No deje que se vaya hacia el lado.
first-days-sling-off = Quítese el cabestrillo solo para lavarse, para vestirse y para los movimientos de esta hoja. Siéntese antes.
first-days-sling-wedge = ¿Su cabestrillo tiene un cojín o una cuña? Entonces pregúntenos antes de quitárselo.
first-days-sling-skin = Mire su piel cada día. ¿Está roja o duele donde roza el cabestrillo? Llame y pregunte.
first-days-sling-balance = Con el cabestrillo puede perder un poco el equilibrio. Tenga cuidado en las escaleras y en la ducha.

first-days-numb-title = Mientras el brazo está dormido
first-days-numb-usual = La inyección que duerme el brazo puede durar { $block_usual_hours } horas, y a veces hasta { $block_call_hours }. El brazo puede estar dormido y débil. Es normal.
first-days-numb-signs = También puede faltarle un poco el aire. Puede caérsele un párpado o quedar ronca la voz. Esto pasa cuando se va el efecto de la inyección. Si le falta mucho el aire, llame al número de emergencias.
first-days-numb-prick = También es normal sentir hormigueo cuando se pasa.
first-days-numb-guard = Un brazo dormido no siente el daño. Déjelo en el cabestrillo. Aléjelo de bebidas calientes, cocinas, estufas y cosas que cortan o pinchan.
first-days-numb-ice = Nada de hielo ni calor sobre la piel dormida.
first-days-numb-advice = ¿El brazo sigue dormido o débil { $block_advice_hours } horas después de la operación? Llame y pregunte qué hacer. Después de { $block_call_hours } horas, llame el mismo día.
first-days-numb-pump = ¿Se fue a casa con una bomba para el dolor? Pregunte a su equipo qué es normal para usted.

first-days-tablets-title = Pastillas para el dolor
first-days-tablets-surgeon = Tome las pastillas para el dolor tal como las anotó su cirujano. No tome más de ellas ni otras pastillas para el dolor. Siga con sus otras pastillas como le dijeron.
first-days-tablets-early = Empiece antes de volver a sentir todo el brazo, a las horas que anotó su cirujano. No se salte las de la hora de dormir. El efecto puede irse de noche.

first-days-ice-title = Hielo
first-days-ice-how = Cuando vuelva a sentir la piel, el hielo puede ayudar. Envuélvalo en una toalla húmeda. Úselo { $ice_minutes } minutos, hasta { $ice_times } veces al día. Mantenga seca la herida.

first-days-moves-title = Movimientos que puede hacer
first-days-moves-when = Espere a que el brazo ya no esté dormido. Mantenga la parte alta del brazo pegada al cuerpo. El hombro no se mueve.
first-days-moves-hand = Mano: abra la mano y luego cierre el puño. No tenga nada en ella. Hágalo { $hand_repetitions } veces.
first-days-moves-wrist = Muñeca: dóblela hacia arriba y hacia abajo. Hágalo { $hand_repetitions } veces.
first-days-moves-elbow = Codo: siéntese y tome la muñeca con la otra mano. La otra mano dobla el codo y lo baja otra vez. El brazo operado no trabaja. Bájelo solo hasta donde llegue con facilidad. No empuje el codo para estirarlo. Pare si el otro brazo también duele.
first-days-moves-palm = No gire la palma hacia arriba con su propia fuerza.
first-days-moves-often = Haga estos movimientos hasta { $sessions } veces al día.
first-days-moves-stop = Una molestia que pasa pronto está bien. ¿Duele más de { $pain_minutes } minutos después? Entonces haga menos la próxima vez.

first-days-wash-title = Lavarse y vestirse
first-days-wash-shower = Use la ducha y no la bañera. Use algo que mantenga seca la herida. Mantenga seca la herida. Puede mojarse desde el { $dry_until }, pero solo cuando ya esté sana.
first-days-wash-armpit = Para lavarse bajo el brazo, inclínese un poco hacia delante. Deje colgar el brazo y no lo levante. Lávese con la otra mano.
first-days-wash-dress = Meta primero el brazo operado en su manga. Al desvestirse, sáquelo al final. Deje que cuelgue o descanse. No lo levante ni lo tuerza.
first-days-wash-dressing = Deje el vendaje de la herida como le dijeron. Al principio es normal un poco de sangre en él.
first-days-wash-rings = Quítese los anillos de esa mano. La mano puede hincharse.

first-days-sleep-title = Dormir
first-days-sleep-sling = No se quite el cabestrillo para dormir.
first-days-sleep-how = Duerma boca arriba, con la espalda medio levantada o sobre el otro lado. Ponga una almohada bajo el brazo operado. No duerma sobre el lado { $side ->
    [left] IZQUIERDO
    [right] DERECHO
   *[other] operado
    }.

first-days-emergency-title = Llame enseguida al número de emergencias
first-days-emergency-chest = Dolor en el pecho
first-days-emergency-breath = Le falta mucho el aire, o le falta de repente
first-days-emergency-blood = Tose sangre
first-days-emergency-collapse = Se desmaya
first-days-emergency-lips = Se le ponen azules los labios

first-days-today-title = Llámenos el mismo día, sea de día o de noche
first-days-today-fever = Mide una fiebre de { $fever_celsius } °C ({ $fever_fahrenheit } °F) o más.
first-days-today-fever-again = En los primeros { $fever_again_days } días, beba algo, respire hondo unas veces y mida otra vez. Si sigue alta, llame. Si tiene escalofríos, llame enseguida.
first-days-today-wound = La piel junto a la herida está cada vez más roja o caliente. O la herida se abre, o sale pus.
first-days-today-leak = Una mancha pasa el borde del vendaje. O sale sangre fresca o líquido después de { $leak_hours } horas.
first-days-today-pain = Sus pastillas no calman el dolor.
first-days-today-stiff = El dolor crece día a día.
first-days-today-fingers = Tiene los dedos fríos, blancos o azules.
first-days-today-swelling = Se le hincha el brazo o la pantorrilla, o le duele la pantorrilla.
first-days-today-sick = No deja de vomitar o no puede orinar.
first-days-today-numb = El brazo sigue dormido o débil después de { $block_call_hours } horas, o se vuelve débil otra vez.
first-days-today-fall = Sintió un chasquido o se cayó. Pare todos los movimientos y póngase el cabestrillo.

first-days-soon-title = Llámenos en un plazo de { $soon_days } días
first-days-soon-hand = La mano está hinchada, rígida o arde, o la piel cambia de color.

first-days-visit-title = Su primera visita
first-days-visit-when = Miramos su herida entre el { $visit_from } y el { $visit_until }. ¿Aún no tiene fecha? Llame al número de día.
first-days-visit-bring = Traiga esta hoja y sus pastillas.
